import { describe, expect, it } from "vitest";
import { wordsIn } from "../../../lib/words/words";
import { clientStanding, isEnded } from "../../../lib/enquiry/client-standing";
import { inspectionSchema, sellerLetterFields } from "../../../lib/enquiry/document-forms";
import { reportHeadSchema } from "../../../lib/enquiry/laboratory-schema";
import { sayLetter } from "../../../lib/enquiry/letter-words";
import { READ_OUT } from "../../../lib/mail/last-word";
import { newReference, REFERENCE_LETTERS, REFERENCE_PATTERN } from "../../../lib/enquiry/reference";
import { mergeAnswers } from "../../../lib/enquiry/save-intake";
import { firstAidAtOnce, firstAidOf } from "../../../lib/enquiry/wet-by-words";
import { firstAidSentences } from "../../../lib/trade/first-aid";
import type { RugAnswers } from "../../../lib/trade/questions";
import { STATES } from "../../../lib/enquiry/states";
import { MESSAGE, messagesOf, rugAnswersOf } from "../../../lib/enquiry/stored";
import type { LetterStateId } from "../../../lib/enquiry/views";

describe("newReference", () => {
  it("is a letter, a digit, a dash and three digits, at both ends of the draw", () => {
    expect(newReference(() => 0)).toBe("A0-000");
    expect(newReference((below) => below - 1)).toBe("Y9-999");
    for (let n = 0; n < 1_000; n++) expect(newReference()).toMatch(REFERENCE_PATTERN);
  });
  it("uses no letter that is read as a digit or as another letter", () => {
    for (const letter of "BGILOQSZ") expect(REFERENCE_LETTERS).not.toContain(letter);
    expect(new Set(REFERENCE_LETTERS).size).toBe(REFERENCE_LETTERS.length);
  });
});

describe("the day of an inspection, and of a laboratory's report", () => {
  const thisYear = new Date().getUTCFullYear();
  const inspection = (day: string) => inspectionSchema.safeParse({ by: "Ivo Castellane", day, found: "Sound.", beyondRepair: "no" });
  const report = (reportedOn: string) => reportHeadSchema.safeParse({ laboratory: "A laboratory", reportedOn, reference: "" });
  it("is one of these years: a slip in the year would be printed for an insurer", () => {
    for (const read of [inspection, report]) {
      expect(read(`${thisYear - 19}-06-01`).success).toBe(true);
      for (const slip of ["0026-11-20", "1800-01-01", `${thisYear - 22}-01-01`]) expect(read(slip).error?.issues[0]?.message).toMatch(/look at the year/);
      expect(read(`${thisYear + 1}-12-31`).error?.issues[0]?.message).toMatch(/has not come yet/);
    }
  });
});

describe("the letter to a seller's form", () => {
  const thisYear = new Date().getUTCFullYear();
  const wrong = (fields: object) => { const read = sellerLetterFields.safeParse({ sellerName: "Kestrel Floors", ...fields }); return read.success ? {} : Object.fromEntries(read.error.issues.map((i) => [String(i.path[0]), i.message])); };
  it.each(["€1,200", "1.200,50 EUR", "900", "about 900 pounds", "€ 900,-", "900 - 1,000", "£0.50", ""])("takes a price as people write it: %s", (price) => expect(wrong({ price })).toEqual({}));
  it.each(["-5", "€ -5", "−5", "EUR -1,200", "0", "€0.00", "free", "???"])("asks again for a price that is none: %s", (price) => expect(wrong({ price })).toEqual({ price: expect.stringMatching(/sum above nothing/) as string }));
  it.each(["2024", "May 2024", "3 May 2024", "May 3, 2024", "03/05/2024", "5/30/2024", "30.5.2024", "2024-05-03", "29 February 2024", "spring 2019", `1 January ${thisYear}`, String(thisYear), String(thisYear - 99), ""])("takes a day as people write it: %s", (boughtOn) => expect(wrong({ boughtOn })).toEqual({}));
  it.each([[`${thisYear + 1}`, /not come yet/], [`3 May ${thisYear + 1}`, /not come yet/], [`${thisYear + 2}-01-01`, /not come yet/], ["30 February 2024", /no such day/], ["31/31/2024", /no such day/], ["2024-13-40", /no such day/], ["1/2/3 2024", /no such day/], ["yesterday", /year in four figures/], ["May 24", /year in four figures/], ["2023 or 2024", /year in four figures/], [String(thisYear - 101), /look at the year/]] as const)("says what is wrong with %s", (boughtOn, says) => expect(wrong({ boughtOn })).toEqual({ boughtOn: expect.stringMatching(says) as string }));
  it("takes no name of spaces, of what cannot be seen or of signs alone", () => {
    for (const sellerName of ["", "   ", "\u200b\u200b", "???"]) expect(wrong({ sellerName })).toEqual({ sellerName: "Write whom the letter is to." });
    for (const sellerName of ["7", "Łukasz", "ليلى"]) expect(wrong({ sellerName })).toEqual({});
  });
  it("says of every other field what is wrong with it", () => {
    expect(wrong({ clientAddress: "–", sellerAddress: "...", invoice: "#", saidWords: "12 %", labelWords: "🙂" })).toEqual({
      clientAddress: expect.stringMatching(/letters or figures/) as string, sellerAddress: expect.stringMatching(/letters or figures/) as string, invoice: expect.stringMatching(/letters or figures/) as string,
      saidWords: expect.stringMatching(/word for word/) as string, labelWords: expect.stringMatching(/word for word/) as string,
    });
  });
});

describe("sayLetter", () => {
  const states: LetterStateId[] = ["held", "waiting", "sending", "sent", "failed", "unknown", "taken_back"];
  const letter = { toAddress: "ana@example.org", lastResponse: null, attempts: 0 };
  it("says sent of nothing but what was sent", () => {
    for (const state of states) {
      const says = sayLetter({ ...letter, state }, true);
      expect(/^Sent/.test(says), `${state}: ${says}`).toBe(state === "sent");
    }
  });
  it("says what a waiting letter waits for", () => {
    expect(sayLetter({ ...letter, state: "waiting" }, false)).toBe("Not sent: no mail server is set up.");
    expect(sayLetter({ ...letter, state: "waiting" }, true)).toBe("Goes out in a moment.");
    expect(sayLetter({ ...letter, state: "waiting", attempts: 1 }, true)).toMatch(/^Not sent yet: tried once/);
    expect(sayLetter({ ...letter, state: "waiting", attempts: 2 }, true)).toMatch(/^Not sent yet: tried 2 times/);
  });
  it("says of a letter that was sent after a doubtful try that it may have arrived twice", () => {
    expect(sayLetter({ ...letter, state: "sent", lastResponse: "250 taken" }, true)).toBe("Sent.");
    expect(sayLetter({ ...letter, state: "sent", lastResponse: "250 taken It may have arrived twice." }, true)).toBe("Sent. It may have arrived twice.");
  });
  it("says once why a letter failed, and that the server refused it only where it did", () => {
    const failed = (lastResponse: string | null) => sayLetter({ ...letter, state: "failed", lastResponse }, true);
    expect(failed("550 5.1.1 No such user here")).toBe("Not sent: the mail server refused it. 550 5.1.1 No such user here.");
    expect(failed(null)).toBe("Not sent: the mail server refused it.");
    expect(failed("Not sent: this address was refused before (550 5.1.1).")).toBe("Not sent: this address was refused before (550 5.1.1).");
    expect(failed("Our letter came back: 550 5.1.1 no such user.")).toBe("Not delivered. Our letter came back: 550 5.1.1 no such user.");
    expect(failed("Given up after four days. 450 4.2.0 Later")).toBe("Not delivered. Given up after four days. 450 4.2.0 Later.");
  });
  it("calls a letter neither sent nor undelivered that may have arrived at an earlier try", () => {
    for (const last of ["Given up after four days. 450 4.2.0 Later It may have arrived.", "550 5.1.1 No such user An earlier try may have arrived.", "Not sent: this address was refused before (550). An earlier try may have arrived."]) {
      const says = sayLetter({ ...letter, state: "failed", lastResponse: last }, true);
      expect(says).toBe(`Nobody knows whether it arrived, and it is not tried again. ${last}`);
    }
  });
  it("gives the server's reason while a letter is tried again", () => {
    expect(sayLetter({ ...letter, state: "waiting", attempts: 1, lastResponse: "451 4.3.0 try later" }, true)).toBe("Not sent yet: tried once, and it is tried again. The last try ended with: “451 4.3.0 try later”.");
    expect(sayLetter({ ...letter, state: "unknown", attempts: 1, lastResponse: "Connection closed It may have arrived." }, true)).toMatch(/may arrive twice\. The last try ended with: “Connection closed”\.$/);
    expect(sayLetter({ ...letter, state: "waiting", attempts: 0, lastResponse: "451 4.3.0 try later" }, true)).toBe("Goes out in a moment.");
  });
  it("never promises mail to a client who left no address", () => {
    for (const state of states.filter((s) => s !== "taken_back")) expect(sayLetter({ ...letter, toAddress: "", state }, true), state).toMatch(/^Not sent: the client left no/);
    expect(sayLetter({ ...letter, toAddress: "", state: "sent", lastResponse: READ_OUT }, true)).toBe(READ_OUT);
  });
});

describe("clientStanding", () => {
  it("is a sentence in every state, after every kind of letter, and never speaks of the desk", () => {
    for (const state of STATES)
      for (const kind of [null, "reply", "question"] as const) {
        expect(clientStanding(state, kind, wordsIn("en-GB"))).toMatch(/^[A-Z].*\.$/);
        expect(clientStanding(state, kind, wordsIn("en-GB"))).not.toMatch(/queue|draft|turn|state/);
      }
  });
  it("says answered only after a reply", () => {
    expect(clientStanding("their_turn", "reply", wordsIn("en-GB"))).toContain("has answered you");
    expect(clientStanding("their_turn", "question", wordsIn("en-GB"))).not.toContain("has answered you");
    expect(clientStanding("their_turn", null, wordsIn("en-GB"))).not.toContain("has answered you");
  });
  it("knows the four ends", () => {
    expect(STATES.filter(isEnded)).toEqual(["finished", "declined", "withdrawn", "closed_unanswered"]);
  });
});

describe("mergeAnswers", () => {
  it("takes the patch where it says something, and keeps the rest", () => {
    const old = { wetNow: "wet", rug: { touch: "springy", widthCm: 100 } } as const;
    expect(mergeAnswers(old, { rug: { widthCm: 200, touch: undefined } })).toEqual({ wetNow: "wet", rug: { touch: "springy", widthCm: 200 } });
    expect(mergeAnswers(old, {})).toEqual(old);
    expect(mergeAnswers({}, { contact: { name: "Ana" } })).toEqual({ contact: { name: "Ana" } });
  });
});

describe("rugAnswersOf", () => {
  const row = (question: string, value: unknown, minute: number) => ({
    question,
    value: value as never,
    at: new Date(Date.UTC(2026, 10, 25, 9, minute)),
  });
  it("takes the newest row of each question, in whatever order they are read", () => {
    const rows = [row("touch", "springy", 2), row("touch", "plastic", 1), row("shine", "none", 1)];
    expect(rugAnswersOf(rows)).toEqual({ touch: "springy", shine: "none" });
    expect(rugAnswersOf([...rows].reverse())).toEqual({ touch: "springy", shine: "none" });
  });
  it("leaves out a question that is no longer asked, and an answer that is no longer offered", () => {
    expect(rugAnswersOf([row("smellOfSheep", "yes", 1), row("touch", "like velvet", 1), row("shine", "satin", 1)])).toEqual({ shine: "satin" });
  });
  it("keeps messages apart, oldest first", () => {
    const rows = [row(MESSAGE, "second", 9), row(MESSAGE, "first", 3), row("shine", "satin", 1)];
    expect(rugAnswersOf(rows)).toEqual({ shine: "satin" });
    expect(messagesOf(rows).map((m) => m.text)).toEqual(["first", "second"]);
  });
});

describe("firstAidAtOnce", () => {
  it("is of gas where bleach and something that it can give off gas with were told, and of what is wet without", () => {
    const of = (treatments: RugAnswers["treatments"]) => firstAidAtOnce({ assessments: [{ firstAid: firstAidSentences() }], byWords: [], answers: [{ treatments }], emergencyNumber: "112" });
    expect(of(["bleach", "vinegar-soda"])).toEqual({ of: "gas", lines: firstAidSentences("112", false, true) });
    expect(of(["bleach"])).toEqual({ of: "wet", lines: firstAidSentences("112") });
  });
});

describe("the first aid of an enquiry about several rugs, as it goes out at once", () => {
  const [whole, handsOff, dry] = [firstAidSentences("112"), firstAidSentences("112", true), null].map((firstAid) => ({ firstAid }));
  const kindOf = (...assessments: { firstAid: string[] | null }[]) => firstAidOf(assessments, []);
  it("lets nobody touch any where one of them may not be touched, in whatever order they were told of", () => {
    expect([kindOf(whole!, handsOff!), kindOf(handsOff!, whole!), kindOf(dry!, whole!, handsOff!)]).toEqual(["hands-off", "hands-off", "hands-off"]);
    expect([kindOf(whole!, whole!), kindOf(dry!, whole!), kindOf(dry!)]).toEqual(["whole", "whole", null]);
  });
});
