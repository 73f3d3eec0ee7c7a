import "server-only";
import { database, type Prisma } from "../store/database";
import { authorise } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { matches } from "./matches";
import { SLIP_PARTS, slipOf } from "./slip";
import type { EnquiryStateId, Slip } from "./views";

/** How many stand on one page of the list. */
export const PAGE_OF_SLIPS = 50;

export interface Looking { page?: number; text?: string; state?: EnquiryStateId | null }

/** All enquiries, or those a search finds, the newest first, a page at a time (the first is 1). */
export async function readEverything(caller: Caller, { page = 1, text = "", state = null }: Looking = {}): Promise<Result<{ slips: Slip[]; total: number; page: number; pages: number }>> {
  const no = authorise(caller, "read-desk");
  if (no) return no;
  const { enquiry } = database();
  const where = await whereOf(text, state);
  const total = await enquiry.count({ where });
  const pages = Math.max(1, Math.ceil(total / PAGE_OF_SLIPS));
  const at = Math.min(Math.max(1, Number.isSafeInteger(page) ? page : 1), pages);
  const rows = await enquiry.findMany({ where, orderBy: [{ submittedAt: "desc" }, { id: "asc" }], skip: (at - 1) * PAGE_OF_SLIPS, take: PAGE_OF_SLIPS, include: SLIP_PARTS });
  return ok({ slips: rows.map(slipOf), total, page: at, pages });
}

/** The newest that a search may find: more would not be read through by anybody, and would outgrow one query's parameters. */
const MOST_FOUND = 500;

/** Words are compared here and not by the database: SQLite and PostgreSQL do not agree on capitals, and neither on accents. */
async function whereOf(text: string, state: EnquiryStateId | null): Promise<Prisma.EnquiryWhereInput> {
  const inState: Prisma.EnquiryWhereInput = state ? { state } : {};
  if (!text.trim()) return inState;
  const all = await database().enquiry.findMany({
    where: inState, orderBy: { submittedAt: "desc" }, select: { id: true, reference: true, title: true, client: { select: { name: true, email: true, telephone: true } } },
  });
  return { id: { in: all.filter((e) => matches(text, e)).slice(0, MOST_FOUND).map((e) => e.id) } };
}
