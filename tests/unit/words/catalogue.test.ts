import { parse, TYPE, type MessageFormatElement } from "@formatjs/icu-messageformat-parser";
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { SHIPPED } from "../../../lib/reply/library";
import { EN } from "../../../lib/words/en/messages";
import { OFFERED_LOCALES } from "../../../lib/words/locales";
import { TABLES_EN } from "../../../lib/words/tables";
import { deskWords, wordsIn, type MessageKey } from "../../../lib/words/words";

const ROOT = path.resolve(import.meta.dirname, "../../..");
const KEYS = Object.keys(EN) as MessageKey[];

/** Every source file of the product but the catalogue itself. */
function sources(folder: string): string[] {
  return readdirSync(path.join(ROOT, folder), { withFileTypes: true }).flatMap((entry) => {
    const file = path.join(folder, entry.name);
    if (entry.isDirectory()) return file.endsWith("generated") || file.endsWith(path.join("words", "en")) ? [] : sources(file);
    return /\.tsx?$/.test(entry.name) ? [readFileSync(path.join(ROOT, file), "utf8")] : [];
  });
}
const CODE = [...sources("app"), ...sources("lib")].join("\n");
/** Keys made of parts, as `standing.${state}`: each becomes a pattern. */
const FAMILIES = [...CODE.matchAll(/`([a-z-]+\.[^`$]*\$\{[^`]*)`/g)].map(([, key]) => new RegExp(`^${(key as string).replace(/[.]/g, "\\.").replace(/\$\{[^}]*\}/g, "[\\w-]+")}$`));

/** Words that America spells otherwise than Britain, as it spells them. By hand. */
const AMERICAN = /\b(?:un|dis)?(?:colors?|colored|coloring|gray(?:er|ish|ness)?|fibers?|mold(?:y|s)?|molding|centers?|meters? (?:long|wide|of)|catalogs?|judgment|favorite|neighbors?|odors?)\b/iu;

/** The names a message leaves open, tags included. */
function openNames(elements: readonly MessageFormatElement[]): string[] {
  return elements.flatMap((e) => {
    if (e.type === TYPE.literal || e.type === TYPE.pound) return [];
    const inside = e.type === TYPE.tag ? openNames(e.children) : e.type === TYPE.plural || e.type === TYPE.select ? Object.values(e.options).flatMap((o) => openNames(o.value)) : [];
    return [e.value, ...inside];
  });
}

describe("the catalogue in English", () => {
  it("has each key in one of its parts alone: joined, the later one would take the earlier one's place", () => {
    const folder = path.join(ROOT, "lib/words/en");
    const keys = readdirSync(folder).flatMap((file) => [...readFileSync(path.join(folder, file), "utf8").matchAll(/"([a-z][\w-]*\.[\w.-]+)":/gu)].map(([, key]) => key));
    expect(keys.length).toBeGreaterThanOrEqual(KEYS.length);
    expect(keys.filter((key, n) => keys.indexOf(key) !== n)).toEqual([]);
  });
  it.each(KEYS)("%s can be read", (key) => {
    expect(EN[key].trim()).toBe(EN[key]);
    expect(parse(EN[key]).length).toBeGreaterThan(0);
  });
  it.each(KEYS)("%s is used", (key) => expect(CODE.includes(`"${key}"`) || FAMILIES.some((f) => f.test(key))).toBe(true));
  it("has each key once: of two with one name the later would be said in both places", () => {
    const folder = path.join(ROOT, "lib/words/en");
    const written = readdirSync(folder).flatMap((file) => [...readFileSync(path.join(folder, file), "utf8").matchAll(/^ {2}"([a-z-]+\.[\w.-]+)":/gmu)].map(([, key]) => key as string));
    expect(written.length).toBeGreaterThanOrEqual(KEYS.length);
    expect(written.filter((key, at) => written.indexOf(key) !== at)).toEqual([]);
  });
  it("has every key that is asked for", () => {
    const asked = [...CODE.matchAll(/\b(?:say|parts|open|wrong)\(\s*"([a-z-]+\.[\w-]+)"/g)].map(([, key]) => key);
    expect(asked.length).toBeGreaterThan(100);
    expect(asked.filter((key) => !Object.hasOwn(EN, key as string))).toEqual([]);
  });
  it("fills what is open: no brace and no tag is left in what is said", () => {
    for (const key of KEYS) {
      const names = openNames(parse(EN[key]));
      const values = Object.fromEntries(names.map((name) => [name, new RegExp(`<${name}>`).test(EN[key]) ? (parts: unknown[]) => parts.join("") : 2]));
      const said = wordsIn("en-GB").parts(key, values as never).join("");
      expect(said, key).not.toMatch(/[{}<>]/);
    }
  });
  it("calls the files of a copy what every file system takes", () => {
    for (const key of ["copy.read-me", "copy.everything", "copy.letters", "copy.photos", "copy.documents", "copy.messages"] as const) expect(EN[key], key).toMatch(/^[\p{L}\p{N}]+(?: [\p{L}\p{N}]+)*$/u);
  });
  it("makes a missing value an error, not a hole", () => {
    expect(() => wordsIn("en-GB").say("own.enquiry", {} as never)).toThrow(/reference/);
  });
  it("counts as the language does", () => {
    const { say } = wordsIn("en-GB");
    expect(say("privacy.months", { months: 1, days: 30 })).toContain("One month after");
    expect(say("privacy.months", { months: 24, days: 1 })).toMatch(/^24 months after.* after one day\./);
    expect([0, 1, 20, 21].map((n) => say("count.words", { n }))).toEqual(["none", "one", "twenty", "21"]);
  });
});

describe("types of arguments", () => {
  const { say, parts } = wordsIn("en-GB");
  it("are checked: these lines would not compile without the mark above them", () => {
    // @ts-expect-error A key that does not exist.
    expect(() => say("front.no-such-message")).toThrow();
    // @ts-expect-error An argument that is missing.
    expect(() => say("front.hours")).toThrow();
    // @ts-expect-error An argument of another name.
    expect(() => say("front.hours", { hour: "9 to 17" })).toThrow();
    // @ts-expect-error A number for a plural is no text.
    say("own.room-left", { n: "two", count: "two" });
    // @ts-expect-error An argument where none is taken.
    say("front.title", { hours: "9 to 17" });
    // @ts-expect-error A tag that is missing.
    expect(() => parts("front.wet-first", {})).toThrow();
  });
});

describe("the tables' texts", () => {
  it("are there for every question, answer, photo and step of first aid, and leave nothing open but the emergency number and what stands in a sentence on a method", () => {
    expect(TABLES_EN.size).toBeGreaterThan(150);
    for (const [key, text] of TABLES_EN) {
      expect(text, key).toMatch(/\S/);
      expect(text.replace(key.startsWith("why.sentence.") ? /\{(?:why|fibre|chance)\}/gu : "{number}", ""), key).not.toMatch(/[{}<>⟦⟧]/);
    }
  });
  it("are an error where they are not", () => expect(() => wordsIn("en-GB").table("first-aid.step.99")).toThrow(/first-aid\.step\.99/));
});

describe("wordsIn", () => {
  it("says the same English in every locale that is offered", () => {
    for (const locale of OFFERED_LOCALES) expect(wordsIn(locale).say("front.title"), locale).toBe(EN["front.title"]);
  });
  it("marks every text of the marked locale, inside and out", () => {
    const marked = wordsIn("en-XA");
    expect(marked.say("front.title")).toBe(`⟦${EN["front.title"]}⟧`);
    expect(marked.table("photo.whole.ask")).toBe("⟦The whole rug⟧");
    expect(marked.open("form.again")).toMatch(/^⟦.*⟧$/);
    expect(marked.parts("front.wet-first", { link: (w: unknown[]) => ({ a: w.join("") }) })).toEqual(["⟦Then first this: ", { a: "what to do while it is wet" }, expect.stringMatching(/⟧$/)]);
  });
  it("tells a client of a bench test no strength: those are for trained people", () => {
    const told = [...TABLES_EN].filter(([key]) => key.startsWith("test."));
    expect(told.length).toBeGreaterThan(20);
    expect(told.filter(([, text]) => /\d\s*%/.test(text))).toEqual([]);
  });
  it("never marks the desk", () => expect(deskWords("en-XA").say("front.title")).toBe(EN["front.title"]));
});

describe("the spelling", () => {
  const texts = [...Object.values(EN), ...TABLES_EN.values(), ...SHIPPED.map((row) => row.text)];
  it("is one, as in Britain, on pages, in documents and in letters alike", () => {
    expect(texts.filter((text) => /\bcolour/u.test(text)).length).toBeGreaterThan(10);
    expect(texts.filter((text) => AMERICAN.test(text))).toEqual([]);
  });
  it("sees a word that is spelled otherwise", () => {
    for (const word of ["The color ran.", "gray", "Fibers", "moldy"]) expect(AMERICAN.test(word), word).toBe(true);
  });
});
