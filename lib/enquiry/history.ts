import "server-only";
import * as z from "zod/mini";
import { database, type Audit } from "../store/database";
import { HISTORY_WORDS, type AuditAction } from "./audit";
import { STATE_NAMES } from "./states";
import type { EnquiryView } from "./views";

const movedSchema = z.object({ from: z.string(), to: z.string() });
const stateName = (id: string) => (Object.hasOwn(STATE_NAMES, id) ? STATE_NAMES[id as keyof typeof STATE_NAMES] : id);

function wordsOf({ action, detail }: Audit): string {
  const words = Object.hasOwn(HISTORY_WORDS, action) ? HISTORY_WORDS[action as AuditAction] : action;
  const moved = action === "moved" ? movedSchema.safeParse(detail) : null;
  return moved?.success ? `${words} from “${stateName(moved.data.from)}” to “${stateName(moved.data.to)}”` : words;
}

/** Who did what, oldest first, with names instead of ids. */
export async function historyOf({ audit, client }: { audit: readonly Audit[]; client: { name: string } }): Promise<EnquiryView["history"]> {
  const ids = audit.flatMap((a) => (a.actorKind === "staff" && a.actorId ? [a.actorId] : []));
  const people = await database().staff.findMany({ where: { id: { in: [...new Set(ids)] } }, select: { id: true, name: true } });
  const nameOf = (a: Audit) => {
    if (a.actorKind === "staff") return people.find((p) => p.id === a.actorId)?.name ?? "Somebody who has left";
    return a.actorKind === "system" ? "The program" : client.name;
  };
  return audit.map((a) => ({ at: a.at.toISOString(), who: nameOf(a), what: wordsOf(a) }));
}
