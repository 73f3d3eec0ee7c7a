import { type Page } from "@playwright/test";
import { expect } from "./fixtures";

/** What no catalogue says: units that come with the locale's own data, and codes of an open standard. */
const NOT_WORDS = /^(cm|m|ft|in|sq|EUR|GBP|USD|AUD|CAD|NZD|PDF)$/;

/**
 * Every text a reader of this page sees or hears that stands outside the marks ⟦ ⟧ of the catalogue: visible text, the page's
 * title, names and alternatives. Marks are followed across elements, since a message may set a link inside itself.
 */
function outsideMarks(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    // What stands in a field is what the client typed.
    const NO_TEXT = "script,style,noscript,template,textarea";
    const outside: string[] = [];
    const read = (text: string, from: number): number => {
      let depth = from, out = "";
      for (const c of text) {
        if (c === "⟦") depth++;
        else if (c === "⟧") depth--;
        else out += depth === 0 ? c : " ";
      }
      if (/\p{L}/u.test(out)) outside.push(out.replace(/\s+/g, " ").trim());
      return depth;
    };
    const shown = (el: Element): boolean => !el.closest(`${NO_TEXT},[hidden]`) && el.checkVisibility({ contentVisibilityAuto: false });
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    let depth = 0;
    while (walker.nextNode()) {
      const node = walker.currentNode;
      // A closed fold hides its words from view, not from whoever opens it.
      if (node.parentElement && (shown(node.parentElement) || node.parentElement.closest("details:not([open])")) && !node.parentElement.closest(NO_TEXT)) depth = read(node.textContent ?? "", depth);
    }
    for (const el of document.querySelectorAll("[aria-label],[alt],[placeholder],[title],[aria-roledescription]"))
      for (const name of ["aria-label", "alt", "placeholder", "title", "aria-roledescription"]) read(el.getAttribute(name) ?? "", 0);
    read(document.title, 0);
    if (depth !== 0) outside.push(`The marks do not close: ${depth}`);
    return outside;
  });
}

/** Fails where a page says anything to a client that is not in the catalogue. `data`: what is the client's or the workshop's own. */
export async function expectMarked(page: Page, data: readonly string[] = []): Promise<void> {
  // The longest first, since one may stand within another.
  const own = data.toSorted((a, b) => b.length - a.length);
  const left = (await outsideMarks(page)).map((text) => own.reduce((rest, part) => rest.replaceAll(part, " "), text))
    .filter((text) => (text.match(/[\p{L}²]+/gu) ?? []).some((word) => !NOT_WORDS.test(word)));
  expect(left, `said outside the catalogue at ${new URL(page.url()).pathname}`).toEqual([]);
}
