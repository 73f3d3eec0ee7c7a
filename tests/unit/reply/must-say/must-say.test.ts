import { describe, expect, it } from "vitest";
import { readingOf } from "../../../../lib/reply/reading";
import { checkLetter, knownOf } from "../../../../lib/reply/promises/check";
import { DEMO_LETTERS } from "./demo-letters";
import { ALWAYS, MUST_SAY, NEVER, type Line } from "./lists";

/** An honest letter of this workshop is short; with two rugs in it, half as long again. */
const MOST_WORDS = { one: 350, several: 525 } as const;

describe("the letter to each client of the demo", () => {
  it("has a list of its own", () => expect(MUST_SAY.map((m) => m.client).sort()).toEqual([...DEMO_LETTERS.keys()].sort()));

  for (const { client, says, never } of MUST_SAY) {
    const letter = DEMO_LETTERS.get(client);
    const text = (letter?.draft.text ?? "").replaceAll("\u00a0", " ");
    const missing = (lines: readonly Line[]) => lines.filter(([, pattern]) => !pattern.test(text)).map(([meaning]) => meaning);
    const said = (lines: readonly Line[]) => lines.flatMap(([meaning, pattern]) => (pattern.test(text) ? [`${meaning}: ${pattern.exec(text)?.[0]}`] : []));

    it(`${client}: says what it must`, () => expect(missing([...says, ...ALWAYS])).toEqual([]));
    it(`${client}: says nothing that it must not`, () => expect(said([...never, ...NEVER])).toEqual([]));
    it(`${client}: is short, plain and promises nothing`, () => {
      const rugs = letter?.rugs ?? [];
      expect(text.startsWith(`Dear ${client},`)).toBe(true);
      expect(readingOf(text).words).toBeLessThanOrEqual(rugs.length > 1 ? MOST_WORDS.several : MOST_WORDS.one);
      expect(readingOf(text).grade).toBeLessThanOrEqual(8);
      expect(checkLetter(text, knownOf(rugs.map((r) => r.assessment)))).toEqual([]);
    });
  }
});
