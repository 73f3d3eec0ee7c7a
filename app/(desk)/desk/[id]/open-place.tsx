import { openPlaces } from "@/lib/reply/open-places";
import css from "./letter-desk.module.css";

/** Selects the first open place of a letter in its field and brings it into view, so that what is typed stands in its place. */
export function selectOpenPlace(field: HTMLTextAreaElement | null, text: string): void {
  const [first] = openPlaces(text);
  if (!field || !first) return;
  selectWords(field, text, first);
}

/** Selects these words of a letter in its field, where they first stand, and brings them into view; nothing where they do not stand in it. */
export function selectWords(field: HTMLTextAreaElement | null, text: string, words: string): void {
  const at = text.indexOf(words);
  if (!field || at < 0) return;
  field.focus({ preventScroll: true });
  field.setSelectionRange(at, at + words.length);
  bringIntoView(field, heightOf(field, text.slice(0, at)));
}

/** How far down from the top of a field these first words of it reach, in CSS pixels. A browser does not say where in a field words stand, so they are laid out once more in one like it. */
function heightOf(field: HTMLTextAreaElement, words: string): number {
  const like = field.cloneNode() as HTMLTextAreaElement;
  like.value = words;
  Object.assign(like.style, { position: "absolute", visibility: "hidden", width: `${field.clientWidth}px`, height: "0", minHeight: "0", fieldSizing: "fixed" });
  field.before(like);
  const reach = like.scrollHeight - (parseFloat(getComputedStyle(like).paddingBottom) || 0);
  like.remove();
  return reach;
}

/** Of the window, so much stays above the place: it stands clear of a telephone's keyboard. By eye. */
const ABOVE = "30vh";

/** Scrolls a place so far down a field into view: the field where it is shorter than its words, and whatever it stands in. */
function bringIntoView(field: HTMLTextAreaElement, down: number): void {
  field.scrollTop = down - field.clientHeight / 2;
  const place = document.createElement("span");
  Object.assign(place.style, { position: "absolute", marginTop: `${down - field.scrollTop}px`, scrollMarginTop: ABOVE });
  field.before(place);
  place.scrollIntoView({ block: "start" });
  place.remove();
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
