"use server";
import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import * as z from "zod/mini";
import { answerForm, fieldsOf } from "@/app/(desk)/_server/answer-form";
import { asStaff, SIGNED_OUT } from "@/app/(desk)/_server/as-staff";
import { staffCallerOrNull } from "@/app/_server/caller";
import { ok, refuse, type Result } from "@/lib/enquiry/caller";
import { paragraphForm } from "@/lib/enquiry/paragraph-form";
import type { ParagraphPreview } from "@/lib/enquiry/paragraph-views";
import { previewParagraph } from "@/lib/enquiry/preview-paragraph";
import { restoreParagraph } from "@/lib/enquiry/restore-paragraph";
import { saveParagraph } from "@/lib/enquiry/save-paragraph";
import { saveSettings } from "@/lib/enquiry/save-settings";
import type { FormValues } from "@/lib/enquiry/step-schemas";
import { TONE_IDS } from "@/lib/trade/tones";
import type { FormState } from "@/lib/ui/form-state";
import { readSettings } from "@/lib/workshop/settings";

const ROOM = "/desk/settings/paragraphs";
const USED = "Letters from now on use it. Waiting drafts that nobody has changed were written anew with it; those that somebody changed stay as they are and say what changed.";

/** Keeps one paragraph. `seen`: the newest version of the workshop's own that stood on the page. A new one leads to its own page. */
export async function keepParagraph(id: string | null, seen: number, previous: FormState, form: FormData): Promise<FormState> {
  const caller = await staffCallerOrNull();
  let made: string | null = null;
  const state = await answerForm(previous, fieldsOf(form), paragraphForm, {
    operation: async (input) => (caller ? saveParagraph(caller, { id, seen, input }, new Date()) : refuse("not-signed-in", SIGNED_OUT)),
    done: (kept) => {
      made = kept.id;
      return `Kept as version ${kept.version}. ${USED}`;
    },
  });
  if (state.done) revalidatePath(ROOM, "layout");
  if (id === null && made) redirect(`${ROOM}/${made}`);
  return state;
}

const trySchema = z.strictObject({ id: z.nullable(z.string()), input: paragraphForm });
/** What keeping it would do; nothing is kept, so no page is made anew. */
export async function tryParagraph(given: { id: string | null; input: FormValues }): Promise<Result<ParagraphPreview>> {
  const parsed = trySchema.safeParse(given);
  if (!parsed.success) return refuse("invalid", parsed.error.issues[0]?.message ?? "That could not be read.");
  const caller = await staffCallerOrNull();
  return caller ? previewParagraph(caller, parsed.data) : refuse("not-signed-in", SIGNED_OUT);
}

const restoreSchema = z.strictObject({ id: z.string(), seen: z.int() });
/** Answers with what is said of it. */
export async function backToShipped(input: z.infer<typeof restoreSchema>): Promise<Result<string>> {
  return asStaff(restoreSchema, input, async (caller, value) => {
    const back = await restoreParagraph(caller, value, new Date());
    return back.ok ? ok(`Back to the shipped text, as version ${back.value.version}. ${USED}`) : back;
  });
}

const toneShape = z.object({ tone: z.enum(TONE_IDS, "Choose one of the list.") });
const toneSchema = toneShape as unknown as z.ZodMiniType<z.infer<typeof toneShape>, FormValues>;
export async function keepTone(previous: FormState, form: FormData): Promise<FormState> {
  const caller = await staffCallerOrNull();
  const state = await answerForm(previous, fieldsOf(form), toneSchema, {
    operation: async ({ tone }) => (caller ? saveSettings(caller, { ...(await readSettings()), tone }) : refuse("not-signed-in", SIGNED_OUT)),
    done: () => `Kept. ${USED}`,
  });
  if (state.done) revalidatePath(ROOM, "layout");
  return state;
}
