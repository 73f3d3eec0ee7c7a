import { Link } from "@/lib/ui/link";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import { readEverything } from "@/lib/enquiry/read-everything";
import { STATE_NAMES, STATES } from "@/lib/enquiry/states";
import type { EnquiryStateId } from "@/lib/enquiry/views";
import { Slips } from "@/lib/ui/slip";
import { readSettings } from "@/lib/workshop/settings";
import { Refused } from "../../_parts/refused";
import css from "./everything.module.css";

export const metadata = { title: "Everything" };

type Asked = Record<string, string | string[] | undefined>;
const one = (value: string | string[] | undefined): string => [value ?? ""].flat()[0] ?? "";
const stateOf = (id: string): EnquiryStateId | null => STATES.find((s) => s === id) ?? null;

/** Every enquiry there is, newest first; a search is a plain form, so that its page can be kept and shared. */
export default async function Page({ searchParams }: { searchParams: Promise<Asked> }) {
  const caller = await staffCallerOrRedirect();
  const asked = await searchParams;
  const [text, state] = [one(asked.text), stateOf(one(asked.state))];
  const [found, place] = await Promise.all([readEverything(caller, { page: Number(one(asked.page) || 1), text, state }), readSettings()]);
  if (!found.ok) return <Refused refusal={found} />;
  const { slips, total, page, pages } = found.value;
  const now = new Date().toISOString();
  return (
    <>
      <h1>Everything</h1>
      <form className={css.search} role="search">
        <div className="field"><label htmlFor="text">Reference, title, name or address</label><input id="text" name="text" type="search" defaultValue={text} autoComplete="off" /></div>
        <div className="field">
          <label htmlFor="state">Where it stands</label>
          <select id="state" name="state" defaultValue={state ?? ""}>
            <option value="">anywhere</option>
            {STATES.map((s) => <option key={s} value={s}>{STATE_NAMES[s]}</option>)}
          </select>
        </div>
        <button className="button">Find</button>
      </form>
      <p className="small" role="status">{countOf(total, Boolean(text || state))}{(text || state) && <> <Link href="/desk/everything">Show everything</Link></>}</p>
      <Slips slips={slips} now={now} place={place} as="h2" />
      {pages > 1 && <Pages page={page} pages={pages} link={(p) => ({ pathname: "/desk/everything", query: { ...(text && { text }), ...(state && { state }), page: p } })} />}
    </>
  );
}

function countOf(total: number, isSearch: boolean): string {
  if (total === 0) return isSearch ? "Nothing is like that." : "No enquiry has come in yet.";
  return `${total} ${total === 1 ? "enquiry" : "enquiries"}, the newest first.`;
}

function Pages({ page, pages, link }: { page: number; pages: number; link: (page: number) => { pathname: string; query: Record<string, string | number> } }) {
  return (
    <nav className={css.pages} aria-label="Pages">
      {page > 1 && <Link href={link(page - 1)}>Newer</Link>}
      <span className="num">Page {page} of {pages}</span>
      {page < pages && <Link href={link(page + 1)}>Older</Link>}
    </nav>
  );
}
