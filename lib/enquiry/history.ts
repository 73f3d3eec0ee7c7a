import "server-only";
import * as z from "zod/mini";
import { DOCUMENTS } from "../reply/documents/offered";
import type { Audit } from "../store/database";
import { HISTORY_WORDS, type AuditAction } from "./audit";
import { isTestId, testRow } from "./bench-test-schema";
import { documentKindSchema } from "./document-view";
import { peopleNames } from "./people-names";
import { STATE_NAMES } from "./states";
import type { EnquiryView } from "./views";

const movedSchema = z.object({ from: z.string(), to: z.string() });
const testedSchema = z.object({ test: z.string() });
const documentSchema = z.object({ document: documentKindSchema, version: z.number() });
const reasonedSchema = z.object({ reason: z.string() });
const longSchema = z.object({ words: z.number(), longReason: z.optional(z.string()) });
const stateName = (id: string) => (Object.hasOwn(STATE_NAMES, id) ? STATE_NAMES[id as keyof typeof STATE_NAMES] : id);

/** Deeds that let a letter go. */
const SENT = /-(?:approved|waits|seconded)$|^question-asked$/u;

/** What stood against a letter that went all the same, with the reasons that were given. */
function sentAllTheSame(detail: Audit["detail"]): string {
  const [reasoned, long] = [reasonedSchema.safeParse(detail), longSchema.safeParse(detail)];
  const quoted = (reason: string | undefined) => (reason ? `: “${reason}”` : "");
  return `${reasoned.success ? `, though it says more than we know${quoted(reasoned.data.reason)}` : ""}${long.success ? `, ${long.data.words} words long${quoted(long.data.longReason)}` : ""}`;
}

function wordsOf({ action, detail }: Audit): string {
  const words = Object.hasOwn(HISTORY_WORDS, action) ? HISTORY_WORDS[action as AuditAction] : action;
  const tested = action === "test-recorded" ? testedSchema.safeParse(detail) : null;
  if (tested?.success && isTestId(tested.data.test)) return `${words}: ${testRow(tested.data.test).name}`;
  const made = action === "document-made" ? documentSchema.safeParse(detail) : null;
  if (made?.success) return `${words}: ${DOCUMENTS[made.data.document].name}${made.data.version > 1 ? `, version ${made.data.version}` : ""}`;
  if (SENT.test(action)) return `${words}${sentAllTheSame(detail)}`;
  const lifted = action === "address-lifted" ? reasonedSchema.safeParse(detail) : null;
  if (lifted?.success) return `${words}: “${lifted.data.reason}”`;
  const moved = action === "moved" ? movedSchema.safeParse(detail) : null;
  return moved?.success ? `${words} from “${stateName(moved.data.from)}” to “${stateName(moved.data.to)}”` : words;
}

/** Who did what, oldest first, with names instead of ids. */
export async function historyOf({ audit, client }: { audit: readonly Audit[]; client: { name: string } }): Promise<EnquiryView["history"]> {
  const ids = audit.flatMap((a) => (a.actorKind === "staff" && a.actorId ? [a.actorId] : []));
  const staffName = await peopleNames(ids);
  const nameOf = (a: Audit) => {
    if (a.actorKind === "staff") return staffName(a.actorId);
    return a.actorKind === "system" ? "The program" : client.name;
  };
  return audit.map((a) => ({ at: a.at.toISOString(), who: nameOf(a), what: wordsOf(a) }));
}
