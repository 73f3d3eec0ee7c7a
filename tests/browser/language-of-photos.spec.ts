import { readFile } from "node:fs/promises";
import type { Page } from "@playwright/test";
import { strFromU8, unzipSync } from "fflate";
import { drawRug } from "../../prisma/demo/draw-rug";
import { expect, test } from "./fixtures";
import { CLIENT, goOn, run, setSettings, WORKSHOP } from "./language";
import { expectMarked } from "./marked";
import { becomeOwner, linkSentTo, PHONE, rewrite } from "./people";
import { makePhotoFiles } from "./photo-files";

test.use({ expectedErrors: /40\d|415|422/ });

/** Opens every fold of the page, so that what is fetched only then is there too. */
async function openAll(page: Page): Promise<void> {
  const closed = page.locator("main details:not([open]) > summary:visible");
  while (await closed.count() > 0) await closed.first().click();
}
/** What a person at the desk adds to a letter: their own words, in no catalogue. */
const OWN_WORDS = "Juniper lanterns, Nell.";


test("A workshop sees that what is said of photos and labels, in a copy and before erasing can be translated", async ({ page, desk, person }) => {
  test.setTimeout(300_000);
  await becomeOwner(page, desk);
  setSettings(desk, { locale: "en-XA", holdMinutes: 0 });
  const files = await makePhotoFiles();
  const rug = { seed: 41, weave: "knotted" as const, colours: ["#7d2e38", "#d8c7b0", "#2f3a4a"] };
  const data = [...Object.values(WORKSHOP), CLIENT.email, CLIENT.name, OWN_WORDS, "evening.jpg", "moving.gif", "notes.jpg", "PURE", "SILK", "HAND", "KNOTTED", "Silk", "Hand", "Knotted"];
  const phone = await person(PHONE);
  for (const [at, answer] of [["wet-now", "no"], ["seller", "silk"]]) {
    await phone.goto(`${desk.url}/ask/${at}`);
    await phone.locator(`input[name="answer"][value="${answer}"]`).check({ force: true });
    await goOn(phone, data);
  }

  await test.step("the page of photos, with one that is dark, two that are none, a label and a mark to show", async () => {
    await phone.goto(`${desk.url}/ask/photos`);
    let letGo = () => {};
    const held = new Promise<void>((resolve) => { letGo = resolve; });
    await phone.route("**/api/photos", async (route) => { await held; await route.continue(); });
    await phone.locator("#gallery-pile").setInputFiles({ name: "evening.jpg", mimeType: "image/jpeg", buffer: await drawRug({ ...rug, kind: "whole", quality: "dark" }, 1200, 900) });
    await expect(phone.getByRole("progressbar")).toBeVisible();
    await expect(phone.getByText(/rather dark/).first()).toBeVisible();
    await expectMarked(phone, data);
    letGo();
    await expect(phone.locator('img[src^="/photos/"]')).toHaveCount(1);
    await expect(phone.getByText(/rather dark/).first()).toBeVisible();
    await phone.locator("#gallery-back").setInputFiles(files.refused);
    await expect(phone.getByText(/GIF/).first()).toBeVisible();
    await phone.locator("#gallery-back").setInputFiles({ name: "notes.jpg", mimeType: "image/jpeg", buffer: Buffer.from("<!doctype html><html><body>Hello</body></html>") });
    await expect(phone.getByText(/web page/).first()).toBeVisible();
    await expectMarked(phone, data);
    await phone.locator("#gallery-whole").setInputFiles(files.whole);
    await phone.locator("#gallery-label").setInputFiles(files.label);
    await expect(phone.locator('button[name="answer"][value="right"]')).toBeVisible({ timeout: 60_000 });
    await openAll(phone);
    // Two spots and three grips of the label's frame.
    await expect(phone.locator("[aria-roledescription]")).toHaveCount(5);
    await expectMarked(phone, data);
    for (const which of await phone.locator("[aria-roledescription]").all()) await which.press("ArrowRight");
    await expectMarked(phone, data);
    await phone.locator("details").filter({ has: phone.locator('input[type="range"]') }).locator("button.button").click();
    await expect(phone.locator("details [role=status]").filter({ hasText: /\S/ }).first()).toBeVisible();
    await phone.locator('input[type="radio"]').nth(1).check({ force: true });
    await expect(phone.locator("[aria-roledescription]")).toHaveCount(7);
    await expectMarked(phone, data);
    await phone.locator('textarea[name="text"]').fill("");
    await phone.locator('button[name="answer"][value="corrected"]').click();
    await expect(phone.locator("main").getByRole("alert")).toBeVisible();
    await expectMarked(phone, data);
    await phone.locator('button[name="answer"][value="right"]').click();
    await expect(phone.locator('button[name="answer"][value="right"]')).toHaveCount(0);
    await expectMarked(phone, data);
  });

  await test.step("the client's own page, before and after a letter", async () => {
    await phone.goto(`${desk.url}/ask/contact`);
    await phone.locator('[name="name"]').fill(CLIENT.name);
    await phone.locator('[name="email"]').fill(CLIENT.email);
    await goOn(phone, data);
    await phone.goto(`${desk.url}/ask/send`);
    await phone.getByRole("checkbox").check();
    await phone.locator("form .button").click();
    await expect(phone).toHaveURL(/\/ask\/sent$/);
    data.push(await phone.locator("main strong").first().innerText());
    await expect.poll(() => linkSentTo(desk, CLIENT.email)).not.toBe("");
    await phone.goto(linkSentTo(desk, CLIENT.email));
    await openAll(phone);
    await expect(phone.locator("[aria-roledescription]")).not.toHaveCount(0);
    await phone.locator("#gallery-back").setInputFiles(files.refused);
    await expect(phone.getByText(/GIF/).first()).toBeVisible();
    await expectMarked(phone, data);

    await page.goto(`${desk.url}/desk`);
    await page.getByRole("main").getByRole("listitem").first().getByRole("link").first().click();
    const letter = page.getByLabel(/letter|reply|text/i).and(page.locator("textarea"));
    await rewrite(letter, (now) => `${now}\n\n${OWN_WORDS}`);
    await page.getByRole("button", { name: "Approve and send" }).click();
    await expect.poll(() => desk.mails.length).toBe(2);
    await phone.reload();
    await expect(phone.getByText(OWN_WORDS)).toBeVisible();
    await openAll(phone);
    // A date is written by the locale's own data, as figures are.
    const [written = ""] = await phone.locator("main time").allTextContents();
    expect(written).toMatch(/^\d{1,2} \p{L}+ \d{4}$/u);
    data.push(written);
    // The shipped paragraphs stand between marks too, since another language has paragraphs of its own; what a person typed stands outside.
    await expectMarked(phone, data);
  });

  await test.step("the copy of everything: what its files are called and what they say of their own", async () => {
    const [download] = await Promise.all([phone.waitForEvent("download"), phone.locator('main a[href^="/copies/"]').click()]);
    const contents = unzipSync(await readFile(await download.path()));
    const names = Object.keys(contents);
    expect(names.length).toBeGreaterThan(4);
    expect(names.filter((name) => !name.startsWith("⟦"))).toEqual([]);
    const [readMe = "", everything = ""] = names.map((name) => strFromU8(contents[name] as Uint8Array));
    expect(readMe.split("\n\n").filter((block) => !/^⟦.*⟧$/su.test(block.trim()))).toEqual([]);
    const told = JSON.parse(everything) as { enquiry: { state: string; why: string }; history: { what: string }[]; rugs: { answers: { from: string }[]; judged: { result: { advice: { why: string }; urgency: { why: string } } }[] }[] };
    const judged = told.rugs.flatMap((r) => r.judged).flatMap(({ result }) => [result.advice.why, result.urgency.why]);
    const [did, from] = [told.history.map((h) => h.what), told.rugs.flatMap((r) => r.answers).map((a) => a.from)];
    for (const group of [judged, did, from]) expect(group.length).toBeGreaterThan(0);
    const said = [told.enquiry.state, told.enquiry.why, ...judged, ...did, ...from];
    expect(said.filter((text) => !/^⟦.*⟧$/u.test(text))).toEqual([]);
  });

  await test.step("erasing, where work was ordered and where it was not", async () => {
    run(desk, `UPDATE "Enquiry" SET "state" = 'agreed'`);
    await phone.goto(`${desk.url}/your-enquiry/erase`);
    await expect(phone.locator("form")).toHaveCount(0);
    await expectMarked(phone, data);
    run(desk, `UPDATE "Enquiry" SET "state" = 'their_turn'`);
    await phone.reload();
    await phone.locator("form .button").click();
    await expect(phone.getByRole("alert").filter({ has: phone.getByRole("heading") })).toBeVisible();
    await expectMarked(phone, data);
    await phone.getByRole("checkbox").check();
    await phone.locator("form .button").click();
    await expect(phone).toHaveURL(/\/erased$/);
    await expectMarked(phone, data);
  });
});
