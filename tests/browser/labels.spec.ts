import type { Locator, Page } from "@playwright/test";
import sharp, { type Sharp } from "sharp";
import { seeded } from "../../prisma/demo/canvas";
import { conditionsOf } from "../labels/conditions";
import { drawRug } from "../../prisma/demo/draw-rug";
import { drawLabel } from "../labels/draw";
import { TYPEFACES } from "../labels/typefaces";
import { expectAccessible } from "./axe";
import { expect, test } from "./fixtures";
import type { Desk } from "./harness";
import { begin, giveContact, send } from "./homeowner";
import { ownDesk } from "./own-desk";
import { PHONE, type Session } from "./people";

// One desk of this file's own.
let desk: Desk;
let owner: Session;
ownDesk((settled) => { ({ desk, owner } = settled); });

const label = (lines: readonly string[]) => {
  const random = seeded(3);
  const { data, width, height } = drawLabel(random, { language: "en", lines, says: [] }, TYPEFACES[6]!, conditionsOf(random, "clean"));
  return sharp(data, { raw: { width, height, channels: 3 } });
};
const file = async (picture: Sharp) => ({ name: "label.jpg", mimeType: "image/jpeg", buffer: await picture.jpeg({ quality: 90 }).toBuffer() });
/** Two labels side by side: a maker's at the left, what the rug is of at the right. */
async function twoLabels() {
  const [left, right] = await Promise.all([label(["100% SILK", "HAND MADE"]).resize(900, 600, { fit: "fill" }).png().toBuffer(), label(["80% WOOL", "20% VISCOSE"]).resize(900, 600, { fit: "fill" }).png().toBuffer()]);
  return file(sharp({ create: { width: 2000, height: 800, channels: 3, background: "#8d8577" } }).composite([{ input: left, left: 50, top: 100 }, { input: right, left: 1050, top: 100 }]));
}
/** Where the right one lies, in shares of the photo. */
const RIGHT = { from: { x: 0.525, y: 0.125 }, to: { x: 0.975, y: 0.875 } };
/** A reading takes a second or some on a busy machine, the first one longer. */
const READ = { timeout: 60_000 };
/** Of this drawing the reader makes its words and a dozen scraps of the weave. */
const SCRAPS = 22;
/** Of this one, which says art silk, it makes out silk alone. */
const ART_SILK = 8;

async function sends(phone: Page, photo: Awaited<ReturnType<typeof file>>, contact: { name: string; email: string }, beforeSending: (phone: Page) => Promise<unknown> = async () => undefined): Promise<Session> {
  await begin(phone, desk);
  await phone.goto(`${desk.url}/ask/photos`);
  await phone.locator("#gallery-label").setInputFiles(photo);
  await expect(phone.getByText("Kept.")).toBeVisible();
  await beforeSending(phone);
  await giveContact(phone, desk, contact);
  await phone.goto(`${desk.url}/ask/send`);
  await send(phone);
  return phone.context().storageState();
}
/** Titles of slips do not name who wrote. */
async function openEnquiryOf(page: Page, name: string): Promise<void> {
  await page.goto(`${desk.url}/desk/everything`);
  const links = await page.locator('main a[href^="/desk/"]').filter({ hasText: /rug|Rug/ }).evaluateAll((all) => all.map((a) => (a as HTMLAnchorElement).href));
  for (const href of links) {
    await page.goto(href);
    if (await page.getByText(name).first().isVisible()) return;
  }
  throw new Error(`No enquiry of ${name} is at the desk.`);
}
async function at(on: Locator, { x, y }: { x: number; y: number }): Promise<{ x: number; y: number }> {
  await on.scrollIntoViewIfNeeded();
  const box = await on.boundingBox();
  if (!box) throw new Error("The photo is not on the page.");
  return { x: box.x + x * box.width, y: box.y + y * box.height };
}
const question = (page: Page) => page.getByRole("group", { name: "Is this right?" });
const words = (page: Page) => page.locator("p[dir=auto]").filter({ hasText: "%" });

test("A homeowner photographs the label, sees what was read and says it is right; staff see it and put it right", async ({ person }, info) => {
  test.setTimeout(240_000);
  await sends(await person(PHONE), await file(label(["80% WOOL", "20% VISCOSE"])), { name: "Wren Ashdown", email: "wren@example.org" }, async (phone) => {
    await expect(question(phone)).toBeVisible(READ);
    await expect(words(phone)).toHaveText("80% WOOL20% VISCOSE");
    await expect(phone.locator("mark")).toHaveText(["WOOL", "VISCOSE"]);
    await expectAccessible(phone);
    await phone.screenshot({ path: info.outputPath("label-390.png"), fullPage: true });
    await question(phone).getByRole("button", { name: "Yes, that is what it says" }).press("Enter");
    await expect(phone.getByText("This is what the label says. Thank you.")).toBeFocused();
    // Asked once: the way on passes over the question, and its page holds what was agreed to.
    const on = phone.getByRole("link", { name: "Go on" });
    await expect(on).toHaveAttribute("href", "/ask/seller"); // what was kept shows a moment before the rest of the page knows
    await on.click();
    await expect(phone.getByRole("heading", { level: 1 })).toContainText("seller");
    await phone.goto(`${desk.url}/ask/send`);
    await expect(phone.getByText("“80% WOOL 20% VISCOSE”, read from your photo, agreed by you")).toBeVisible();
    await phone.goto(`${desk.url}/ask/label`);
    await expect(phone.getByRole("radio", { name: /^Yes, it says/ })).toBeChecked();
    await expect(phone.getByLabel("What the label says")).toHaveValue("80% WOOL\n20% VISCOSE");
  });
  const page = await person({ storageState: owner });
  await page.goto(`${desk.url}/desk`);
  await page.getByRole("link", { name: "A rug, a mark or damage" }).first().click();
  const seen = page.getByRole("heading", { name: "The label in the photo" }).locator("..");
  await expect(seen).toContainText("This is what the label says.");
  await expect(page.getByRole("region", { name: "As told" })).toContainText("“80% WOOL 20% VISCOSE”, read from the photo, agreed by the client");
  await seen.getByText("Correct the words").click();
  await seen.getByLabel("What stands on the label").fill("");
  await seen.getByRole("button", { name: "Keep these words" }).click();
  await expect(seen.getByRole("alert")).toHaveText("Write what stands on the label.");
  await seen.getByLabel("What stands on the label").fill("80% wool\n20% silk");
  await seen.getByRole("button", { name: "Keep these words" }).click();
  await expect(seen).toContainText("This is what the label says, put right by hand.");
  await expect(seen.locator("mark")).toHaveText(["wool", "silk"]);
  await expectAccessible(page);
  await page.screenshot({ path: info.outputPath("label-desk-1280.png"), fullPage: true });
});

test("A homeowner whose browser runs no script is asked about the label on their own page, and puts the words right", async ({ person }, info) => {
  test.setTimeout(240_000);
  const client = await sends(await person(PHONE), await file(label(["80% WOOL", "20% VISCOSE"])), { name: "Perrin Oakes", email: "perrin@example.org" });
  const phone = await person({ ...PHONE, storageState: client, javaScriptEnabled: false });
  await expect(async () => {
    await phone.goto(`${desk.url}/your-enquiry`);
    await expect(question(phone)).toBeVisible({ timeout: 2_000 });
  }).toPass(READ);
  await expect(words(phone)).toHaveText("80% WOOL20% VISCOSE");
  await phone.screenshot({ path: info.outputPath("own-page-390.png"), fullPage: true });
  await question(phone).getByRole("button", { name: "I cannot tell" }).click();
  await expect(phone.getByText("Thank you. We shall look at the label ourselves.")).toBeVisible();
  await phone.getByText("No, it says something else").click();
  await phone.getByLabel("What stands on the label").fill("x".repeat(1_000));
  await phone.getByLabel("What stands on the label").fill(" ");
  await phone.getByRole("button", { name: "Keep these words" }).click();
  await expect(phone.getByText("Write what stands on the label.")).toBeVisible();
  await phone.getByLabel("What stands on the label").fill("100% viscose");
  await phone.getByRole("button", { name: "Keep these words" }).click();
  await expect(phone.getByText("This is what the label says, put right by hand. Thank you.")).toBeVisible();
  await phone.goto(`${desk.url}/your-enquiry`);
  await expect(words(phone)).toHaveText("100% viscose");
  // A frame would put what was read in the place of what they wrote.
  await expect(phone.getByText("Show where the label is")).toHaveCount(0);
});

test("A homeowner frames the right one of two labels with a finger, and it is read instead", async ({ person }, info) => {
  test.setTimeout(240_000);
  const client = await sends(await person(PHONE), await twoLabels(), { name: "Isolde Fenn", email: "isolde@example.org" });
  const phone = await person({ ...PHONE, storageState: client });
  await phone.goto(`${desk.url}/your-enquiry`);
  await expect(phone.getByText("Show where the label is")).toBeVisible(READ);
  await phone.getByText("Show where the label is").click();
  const photo = phone.getByRole("group", { name: "The photo of the label" });
  for (const corner of [RIGHT.from, RIGHT.to]) {
    const to = await at(photo, corner);
    await phone.touchscreen.tap(to.x, to.y);
  }
  await expect(phone.getByRole("button", { name: /^Lower right corner of the frame, 9[78] % from the left, 8[78] % from the top/ })).toBeVisible();
  await expectAccessible(phone);
  await phone.screenshot({ path: info.outputPath("frame-390.png"), fullPage: true });
  await phone.getByRole("button", { name: "Read this part" }).click();
  await expect(words(phone)).toHaveText("80% WOOL20% VISCOSE", READ);
  await question(phone).getByRole("button", { name: "Yes, that is what it says" }).click();
  await expect(phone.getByText("This is what the label says. Thank you.")).toBeFocused();
});

test("A reviewer frames a label that lies in a photo of the whole rug, by mouse and keyboard, and confirms what is read", async ({ person }, info) => {
  test.setTimeout(240_000);
  const page = await person({ storageState: owner });
  const phone = await person(PHONE);
  await begin(phone, desk);
  await phone.goto(`${desk.url}/ask/photos`);
  await phone.locator("#gallery-whole").setInputFiles(await twoLabels());
  await expect(phone.getByText("Kept.")).toBeVisible();
  await giveContact(phone, desk, { name: "Tobiah Lund", email: "tobiah@example.org" });
  await phone.goto(`${desk.url}/ask/send`);
  await send(phone);
  await openEnquiryOf(page, "Tobiah Lund");
  await page.getByRole("link", { name: /^Measure The whole rug/ }).click();
  await page.getByRole("link", { name: "Label", exact: true }).click();
  const photo = page.getByRole("group", { name: "The photo of the label" });
  await expect(photo).toBeVisible();
  const corner = page.getByRole("button", { name: /^Upper left corner of the frame/ });
  const to = await at(photo, RIGHT.from);
  const from = await at(corner, { x: 0.5, y: 0.5 });
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 4 });
  await page.mouse.up();
  await expect(corner).toHaveAccessibleName(/5[23] % from the left, 1[23] % from the top/);
  await page.getByRole("button", { name: /^Lower right corner of the frame/ }).focus();
  for (let n = 0; n < 4; n++) { await page.keyboard.press("Shift+ArrowRight"); await page.keyboard.press("Shift+ArrowDown"); }
  await expectAccessible(page);
  await page.screenshot({ path: info.outputPath("frame-1280.png"), fullPage: true });
  await page.getByRole("button", { name: "Read this part" }).click();
  await expect(words(page)).toHaveText("80% WOOL20% VISCOSE", READ);
  await question(page).getByRole("button", { name: "Yes, that is what it says" }).click();
  await expect(page.getByText("This is what the label says.")).toBeFocused();
  await page.screenshot({ path: info.outputPath("label-page-1280.png"), fullPage: true });
});

test("A reviewer frames another part of a label that was agreed on, sees both readings and chooses; until then the agreed words count", async ({ person }, info) => {
  test.setTimeout(240_000);
  const client = await sends(await person(PHONE), await twoLabels(), { name: "Linnet Marsh", email: "linnet@example.org" });
  const phone = await person({ ...PHONE, storageState: client });
  await expect(async () => {
    await phone.goto(`${desk.url}/your-enquiry`);
    await expect(question(phone)).toBeVisible({ timeout: 2_000 });
  }).toPass(READ);
  await phone.getByText("No, it says something else").click();
  await phone.getByLabel("What stands on the label").fill("100% silk");
  await phone.getByRole("button", { name: "Keep these words" }).click();
  await expect(phone.getByText("This is what the label says, put right by hand. Thank you.")).toBeFocused();

  const page = await person({ storageState: owner });
  await openEnquiryOf(page, "Linnet Marsh");
  const frameRight = async () => {
    await page.getByRole("link", { name: /^Measure The label/ }).click();
    await page.getByRole("link", { name: "Label", exact: true }).click();
    const photo = page.getByRole("group", { name: "The photo of the label" });
    for (const corner of [RIGHT.from, RIGHT.to]) {
      const to = await at(photo, corner);
      await page.mouse.click(to.x, to.y);
    }
    await page.getByRole("button", { name: "Read this part" }).click();
  };
  const both = page.getByRole("group", { name: "Which words are right?" });
  await frameRight();
  await expect(both).toBeVisible(READ);
  await expect(words(page)).toHaveText(["100% silk", "80% WOOL20% VISCOSE"]);
  await expect(page.getByText("Agreed before. These words count until you say which are right.")).toBeVisible();
  await expectAccessible(page);
  await page.screenshot({ path: info.outputPath("both-1280.png"), fullPage: true });
  await page.setViewportSize({ width: 390, height: 844 });
  await page.emulateMedia({ colorScheme: "dark" });
  await page.screenshot({ path: info.outputPath("both-390-dark.png"), fullPage: true });
  await page.emulateMedia({ colorScheme: "light" });
  await page.setViewportSize({ width: 1280, height: 900 });
  await page.goto(page.url().replace(/\/photos\/.*$/u, ""));
  await expect(page.getByRole("region", { name: "As told" })).toContainText("“100% silk”, read from the photo, agreed by the client");
  await page.getByRole("button", { name: "Keep the words agreed before" }).press("Enter");
  await expect(page.getByText("This is what the label says, put right by hand.")).toBeFocused();
  await frameRight();
  await expect(both).toBeVisible(READ);
  await both.getByRole("button", { name: "Take the words read in the new frame" }).click();
  await expect(page.getByText("This is what the label says.")).toBeFocused();
  await expect(words(page)).toHaveText(["80% WOOL20% VISCOSE"]);
  await phone.reload();
  await expect(words(phone)).toHaveText(["80% WOOL20% VISCOSE"]);
});

test("A homeowner whose label could hardly be read is not asked to agree to scraps, but writes what stands on it", async ({ person }, info) => {
  test.setTimeout(240_000);
  const buffer = Buffer.from(await drawRug({ seed: SCRAPS, kind: "label", weave: "knotted", colours: ["#e8d9b8"], labelText: "100% PURE NEW WOOL" }));
  await sends(await person(PHONE), { name: "label.jpg", mimeType: "image/jpeg", buffer }, { name: "Tansy Ember", email: "tansy@example.org" }, async (phone) => {
    await expect(phone.getByText("We could not make out the words well enough.")).toBeVisible(READ);
    await expect(question(phone)).toHaveCount(0);
    await expect(phone.getByRole("button", { name: "Yes, that is what it says" })).toHaveCount(0);
    const field = phone.getByLabel("What stands on the label");
    await expect(field).toHaveValue("");
    await expectAccessible(phone);
    await phone.screenshot({ path: info.outputPath("label-scraps-390.png"), fullPage: true });
    await field.fill("100% pure new wool");
    await phone.getByRole("button", { name: "Keep these words" }).click();
    await expect(phone.getByText("This is what the label says, put right by hand. Thank you.")).toBeFocused();
  });
});

test("A homeowner who has typed what the label says is not asked for it again beside a photo that cannot be read", async ({ person }, info) => {
  test.setTimeout(240_000);
  const buffer = Buffer.from(await drawRug({ seed: SCRAPS, kind: "label", weave: "knotted", colours: ["#e8d9b8"], labelText: "100% PURE NEW WOOL" }));
  const client = await sends(await person(PHONE), { name: "label.jpg", mimeType: "image/jpeg", buffer }, { name: "Aubrey Linden", email: "aubrey@example.org" }, async (phone) => {
    await expect(phone.getByText("We could not make out the words well enough.")).toBeVisible(READ);
    await phone.goto(`${desk.url}/ask/label`);
    await phone.getByRole("radio", { name: /^Yes, it says/ }).check();
    await phone.getByLabel("What the label says").fill("100% pure new wool");
    await phone.getByRole("button", { name: "Go on" }).click();
    await expect(phone.getByRole("heading", { level: 1 })).toContainText("seller");
  });
  const phone = await person({ ...PHONE, storageState: client });
  await phone.goto(`${desk.url}/your-enquiry`);
  await expect(phone.getByText("You have told us already what stands on the label")).toBeVisible();
  await expect(words(phone)).toHaveText("100% pure new wool");
  const field = phone.getByLabel("What stands on the label");
  await expect(field).toBeHidden();
  await expectAccessible(phone);
  await phone.screenshot({ path: info.outputPath("label-told-390.png"), fullPage: true });
  // Who finds a slip in it can still put it right.
  await phone.getByText("Correct the words").click();
  await expect(field).toHaveValue("100% pure new wool");
  const page = await person({ storageState: owner });
  await openEnquiryOf(page, "Aubrey Linden");
  const seen = page.getByRole("heading", { name: "The label in the photo" }).locator("..");
  await expect(seen).toContainText("Typed of the label100% pure new wool");
  await expect(page.getByLabel("Text of the reply")).toHaveValue(/Going by the label as you typed it \(/);
  await page.screenshot({ path: info.outputPath("label-told-1280.png"), fullPage: true });
});

test("A homeowner whose label may have lost the word before silk is asked for that word, and not for a yes; what they typed before stands beside what is read, and staff see both", async ({ person }, info) => {
  test.setTimeout(300_000);
  const cloth = Buffer.from(await drawRug({ seed: ART_SILK, kind: "label", weave: "tufted", colours: ["#e8d9b8"], labelText: "ART SILK PILE" }));
  const asked = (phone: Page) => phone.getByRole("group", { name: "Is there a word before “silk”, such as “art” or “artificial”?" });
  await sends(await person(PHONE), { name: "label.jpg", mimeType: "image/jpeg", buffer: cloth }, { name: "Bryony Marl", email: "bryony@example.org" }, async (phone) => {
    await expect(asked(phone)).toBeVisible(READ);
    await expect(phone.getByRole("button", { name: "Yes, that is what it says" })).toHaveCount(0);
    await expectAccessible(phone);
    await phone.screenshot({ path: info.outputPath("before-silk-390.png"), fullPage: true });
    await phone.goto(`${desk.url}/ask/label`);
    await phone.getByRole("radio", { name: /^Yes, it says/ }).check();
    await phone.getByLabel("What the label says").fill("art silk pile");
    await phone.getByRole("button", { name: "Go on" }).click();
    await expect(phone.getByRole("heading", { level: 1 })).toContainText("seller");
    await phone.goto(`${desk.url}/ask/photos`);
    await expect(phone.getByText("Before, you wrote something else")).toBeVisible(READ);
    await expect(phone.getByRole("group", { name: "Which words are right?" })).toContainText("Please look whether a word stands before “silk”");
    await expectAccessible(phone);
    await phone.screenshot({ path: info.outputPath("told-390.png"), fullPage: true });
  });
  const page = await person({ storageState: owner });
  await openEnquiryOf(page, "Bryony Marl");
  const seen = page.getByRole("heading", { name: "The label in the photo" }).locator("..");
  await expect(seen).toContainText("Typed of the label, and not the same");
  await expectAccessible(page);
  await page.screenshot({ path: info.outputPath("told-1280.png"), fullPage: true });
  await seen.getByRole("button", { name: "Take the words that were typed" }).click();
  await expect(seen.getByText("This is what the label says, put right by hand.")).toBeFocused();
  await expect(seen.locator("mark")).toHaveText(["art silk"]);
  await page.screenshot({ path: info.outputPath("whole-name-1280.png"), fullPage: true });
});
