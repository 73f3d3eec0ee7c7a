import { describe, expect, it } from "vitest";
import { mostWords } from "../../../../lib/reply/length";
import { checkLetter, knownOf } from "../../../../lib/reply/promises/check";
import { readingOf } from "../../../../lib/reply/reading";
import { DEMO_CLIENTS, lettersTo } from "./demo-letters";
import { ALWAYS, MUST_SAY, NEVER, type Line } from "./lists";

const eased = (text: string) => text.replaceAll("\u00a0", " ");

describe("the letter to each client of the demo", () => {
  it("has a list of its own", () => expect(MUST_SAY.map((m) => m.client).sort()).toEqual([...DEMO_CLIENTS].sort()));

  describe.each(MUST_SAY.flatMap((list) => lettersTo(list.client).map((l) => ({ ...list, ...l }))))("$client, $tone", ({ client, says, never, letter }) => {
    const { draft, rugs } = letter;
    const text = eased(draft.text);
    const missing = (lines: readonly Line[]) => lines.filter(([, pattern]) => !pattern.test(text)).map(([meaning]) => meaning);
    const said = (lines: readonly Line[]) => lines.flatMap(([meaning, pattern]) => (pattern.test(text) ? [`${meaning}: ${pattern.exec(text)?.[0]}`] : []));

    it("says what it must", () => expect(missing([...says, ...ALWAYS])).toEqual([]));
    it("says nothing that it must not", () => expect(said([...never, ...NEVER])).toEqual([]));
    it("is short, plain and promises nothing", () => {
      expect(text.startsWith(`Dear ${client.split(" of ")[0]},`)).toBe(true);
      expect(readingOf(text).words).toBeLessThanOrEqual(mostWords(rugs.length));
      expect(readingOf(text).grade).toBeLessThanOrEqual(8);
      expect(checkLetter(draft.text, knownOf(rugs))).toEqual([]);
    });
  });
});
