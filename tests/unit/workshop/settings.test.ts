import { beforeAll, describe, expect, it } from "vitest";
import { database, migrateDatabase, transact } from "../../../lib/store/database";
import { clientToken, clientUrl, linkMark, withLinks, withoutLinks } from "../../../lib/workshop/client-link";
import { readSettings, writeSettings } from "../../../lib/workshop/settings";
import { DEFAULT_SETTINGS, SETTING_LIMITS, workshopSettingsSchema } from "../../../lib/workshop/settings-schema";
import { DEMO_WORKSHOP } from "../../../prisma/demo/workshop";

const takes = (change: object) => workshopSettingsSchema.safeParse({ ...DEFAULT_SETTINGS, ...change }).success;

describe("workshopSettingsSchema", () => {
  it("takes its own defaults and the demo's workshop", () => {
    expect(takes({})).toBe(true);
    expect(workshopSettingsSchema.safeParse(DEMO_WORKSHOP).success).toBe(true);
  });
  it("takes hold and retention at their limits and not beyond", () => {
    for (const [key, low, high] of [
      ["holdMinutes", 0, SETTING_LIMITS.maxHoldMinutes],
      ["retentionMonths", 1, SETTING_LIMITS.maxRetentionMonths],
    ] as const) {
      expect(
        [low - 1, low, high, high + 1, low + 0.5].map((v) => takes({ [key]: v })),
        key,
      ).toEqual([false, true, true, false, false]);
    }
  });
  it("takes whole weeks from 1 to 52, the first not above the second, and none", () => {
    expect(takes({ workWeeks: null })).toBe(true);
    for (const [low, high, isTaken] of [[1, 52, true], [4, 4, true], [0, 4, false], [3, 53, false], [6, 3, false], [2.5, 4, false]] as const) expect(takes({ workWeeks: { low, high } }), `${low} to ${high}`).toBe(isTaken);
  });
  it("ends how a rug comes as a sentence, and takes no braces, which would hold every letter", () => {
    const kept = (collecting: string) => workshopSettingsSchema.parse({ ...DEFAULT_SETTINGS, collecting }).collecting;
    expect(["", "  ", "We do not collect", "We collect.", "Ask us!", "We collect.\nOr a carrier does"].map(kept)).toEqual(["", "", "We do not collect.", "We collect.", "Ask us!", "We collect. Or a carrier does."]);
    for (const collecting of ["We collect {where}", "x".repeat(SETTING_LIMITS.textChars + 1)]) expect(takes({ collecting })).toBe(false);
  });
  it("takes priors that add up to 1 and no others", () => {
    expect(takes({ priors: { wool: 0.5, viscose: 0.5 } })).toBe(true);
    expect(takes({ priors: { wool: 0.5, viscose: 0.4 } })).toBe(false);
    expect(takes({ priors: { wool: 1.2, viscose: -0.2 } })).toBe(false);
    expect(takes({ priors: { gold: 1 } })).toBe(false);
  });
  it("spells a time zone as the tables of zones do", () => {
    for (const [typed, kept] of [["europe/london", "Europe/London"], [" EUROPE/DUBLIN ", "Europe/Dublin"], ["Europe/Paris", "Europe/Paris"]])
      expect(workshopSettingsSchema.parse({ ...DEFAULT_SETTINGS, timeZone: typed }).timeZone, typed).toBe(kept);
  });
  it("refuses unknown keys, time zones, locales and currencies", () => {
    for (const bad of [
      { extra: 1 },
      { timeZone: "Mars/Base" },
      { locale: "not a tag" },
      { currency: "XTS" },
      { name: " " },
      { email: "two@example.org, b@example.org" },
      { areaUnit: "acre" },
    ])
      expect(takes(bad), JSON.stringify(bad)).toBe(false);
  });
});

describe("readSettings", () => {
  beforeAll(async () => {
    await migrateDatabase();
  });
  it("gives the defaults before anybody set anything", async () => {
    expect(await readSettings()).toEqual(DEFAULT_SETTINGS);
  });
  it("gives back what was written, and defaults for what an older row lacks", async () => {
    await transact((tx) => writeSettings(tx, { ...DEFAULT_SETTINGS, name: "Lantern Yard" }));
    expect((await readSettings()).name).toBe("Lantern Yard");
    await database().workshop.update({ where: { id: "workshop" }, data: { values: { name: "Older" } } });
    expect(await readSettings()).toEqual({ ...DEFAULT_SETTINGS, name: "Older" });
  });
  it("throws where the row cannot be understood, rather than working on with half of it", async () => {
    await database().workshop.update({ where: { id: "workshop" }, data: { values: { holdMinutes: "soon" } } });
    await expect(readSettings()).rejects.toThrow();
  });
});

describe("withLinks", () => {
  const id = "0c7d5a3e-6a55-4b43-9f0a-1d6a5f7f5a11";
  it("writes the link in where its mark stands, in text and in an attribute", () => {
    expect(withLinks(`See ${linkMark(id)}.`)).toBe(`See ${clientUrl(id)}.`);
    expect(withLinks(`<a href="${linkMark(id)}">`)).toBe(`<a href="${clientUrl(id)}">`);
    expect(clientUrl(id)).toMatch(/^http:\/\/127\.0\.0\.1:3000\/e\/[\w-]{43}$/);
  });
  it("shows no link on a page", () => {
    expect(withoutLinks(`See ${linkMark(id)}.`)).not.toContain(clientToken(id));
    expect(withoutLinks(`See ${linkMark(id)}.`)).not.toContain("[[");
  });
  it("gives every id a token of its own, always the same", () => {
    expect(clientToken(id)).toBe(clientToken(id));
    expect(clientToken(id)).not.toBe(clientToken(id.replace("0c", "0d")));
  });
});
