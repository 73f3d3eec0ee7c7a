import { openPlaces } from "@/lib/reply/open-places";
import css from "./letter-desk.module.css";

/** Selects the first open place of a letter in its field, so that what is typed stands in its place. */
export function selectOpenPlace(field: HTMLTextAreaElement | null, text: string): void {
  const [first] = openPlaces(text);
  if (!field || !first) return;
  const at = text.indexOf(first);
  field.focus();
  field.setSelectionRange(at, at + first.length);
}

/** What a letter still leaves open, with the way there. */
export function OpenPlaces({ text, write }: { text: string; write: () => void }) {
  const open = openPlaces(text);
  if (open.length === 0) return null;
  return (
    <div className={`${css.open} no-print`}>
      <p>{open.length === 1 ? "One place is" : `${open.length} places are`} still open: <b>{open.join(", ")}</b>. The letter does not leave before something is written there.</p>
      <button type="button" className="button quiet" onClick={write}>{open.length === 1 ? "Write it" : "Write the first"}</button>
    </div>
  );
}
