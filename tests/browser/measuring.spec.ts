import { execFileSync } from "node:child_process";
import type { Locator, Page } from "@playwright/test";
import { ANSWER_HERE } from "../../lib/reply/open-places";
import { drawRug } from "../../prisma/demo/draw-rug";
import { hasPrograms } from "../programs";
import { expectAccessible } from "./axe";
import { expect, test } from "./fixtures";
import type { Desk } from "./harness";
import { begin, giveContact, send } from "./homeowner";
import { ownDesk } from "./own-desk";
import { holdFor, PHONE, rewrite, type Session } from "./people";
import { makePhotoFiles, type PhotoFiles } from "./photo-files";

// One desk of this file's own, with an owner and one enquiry whose photo is measured.
let desk: Desk;
let files: PhotoFiles;
let owner: Session;
let client: Session;

const picture = (page: Page) => page.getByRole("group", { name: /^(Photo \d: )?The (whole rug|trouble)/ });
/** What stands on each sheet of a page as it is printed (poppler). */
async function sheetsOf(page: Page, file: string): Promise<string[]> {
  await page.pdf({ path: file, format: "A5" });
  return execFileSync("pdftotext", ["-layout", file, "-"], { encoding: "utf8" }).split("\f").filter((sheet) => sheet.trim() !== "");
}
const spot = (page: Page, name: string) => page.getByRole("button", { name: new RegExp(`^${name}, \\d`) });
/** Where a share of the photo's width and height lies on the page. */
async function at(on: Locator, x: number, y: number): Promise<{ x: number; y: number }> {
  await on.scrollIntoViewIfNeeded();
  const box = await on.boundingBox();
  if (!box) throw new Error("The photo is not on the page.");
  return { x: box.x + x * box.width, y: box.y + y * box.height };
}
async function click(page: Page, x: number, y: number): Promise<void> {
  const to = await at(picture(page), x, y);
  await page.mouse.click(to.x, to.y);
}
async function tap(page: Page, x: number, y: number): Promise<void> {
  const to = await at(picture(page), x, y);
  await page.touchscreen.tap(to.x, to.y);
}
/** The photo must have come, since the program looks at it before it says what to do. */
async function loaded(page: Page): Promise<void> {
  await expect(picture(page)).toBeVisible();
  await expect.poll(() => picture(page).locator("img").evaluate((i: HTMLImageElement) => i.complete && i.naturalWidth > 0)).toBe(true);
}

ownDesk((settled) => { ({ desk, owner } = settled); }, { first: async () => { files = await makePhotoFiles(); } });

test("a homeowner touches a clean and a changed spot with a finger, and sends them along", async ({ person, browser }) => {
  const phone = await person(PHONE);
  await begin(phone, desk);
  await phone.goto(`${desk.url}/ask/photos`);
  await phone.locator("#gallery-whole").setInputFiles(files.whole);
  const fold = phone.getByText("Show us a clean and a changed spot");
  await fold.click();
  await loaded(phone);
  await tap(phone, 0.35, 0.7);
  await expect(phone.getByText("Thank you. Now the changed spot.").or(phone.getByText("Move either of them"))).toBeVisible();
  await tap(phone, 0.58, 0.42);
  await expect(spot(phone, "Changed spot")).toHaveAccessibleName(/5[78] % from the left, 4[12] % from the top/);
  await expectAccessible(phone);
  await expect(phone.getByRole("main")).not.toContainText("ΔE00");
  await phone.getByRole("button", { name: "Keep these two" }).click();
  await expect(phone.getByText("You showed us a clean and a changed spot")).toBeVisible();
  await phone.reload();
  await phone.getByText("You showed us a clean and a changed spot").click();
  await expect(spot(phone, "Changed spot")).toHaveAccessibleName(/5[78] % from the left, 4[12] % from the top/);
  await giveContact(phone, desk, { name: "Ottilie Marchbank", email: "ottilie@marchbank.example" });
  await phone.goto(`${desk.url}/ask/send`);
  await send(phone);
  client = await phone.context().storageState();
  const staff = await (await browser.newContext({ storageState: owner })).newPage();
  await staff.goto(`${desk.url}/desk`);
  await staff.getByRole("link", { name: /Ottilie|mark/ }).first().click();
  await expect(staff.getByText("Marked by the client.")).toBeVisible();
  await staff.context().close();
});

/** The page of the enquiry's photo. */
async function opens(page: Page): Promise<string> {
  await page.goto(`${desk.url}/desk/everything`);
  await page.locator('a[href^="/desk/"]').filter({ hasText: /mark|rug|Rug/ }).first().click();
  await expect(page.getByRole("link", { name: /^Measure/ }).first()).toBeVisible();
  const enquiry = page.url();
  await page.getByRole("link", { name: /^Measure/ }).first().click();
  await expect(page).toHaveURL(/\/photos\//);
  await loaded(page);
  return enquiry;
}

test("a reviewer moves a spot with the mouse and the keyboard, and the numbers follow", async ({ person }) => {
  const page = await person({ storageState: owner });
  const enquiry = await opens(page);
  await page.getByRole("button", { name: "Compare another pair" }).click();
  await loaded(page);
  const range = page.getByRole("img", { name: /^ΔE00 between/ });
  await click(page, 0.35, 0.7);
  await click(page, 0.4, 0.75);
  const near = await range.getAttribute("aria-label");
  const [from, to] = [await at(picture(page), 0.4, 0.75), await at(picture(page), 0.6, 0.4)];
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 5 });
  await expect(range).not.toHaveAttribute("aria-label", near ?? "");
  await page.mouse.up();
  await expect(spot(page, "Affected spot")).toHaveAccessibleName(/(59|60) % from the left, (39|40) % from the top/);
  await spot(page, "Affected spot").focus();
  await page.keyboard.press("Shift+ArrowRight");
  await expect(spot(page, "Affected spot")).toHaveAccessibleName(/(63|64) % from the left/);
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(spot(page, "Affected spot")).toHaveAccessibleName(/(59|60) % from the left/);
  await expectAccessible(page);
  await page.getByRole("button", { name: "Keep this measurement" }).click();
  const kept = page.getByRole("region", { name: "Kept measurements" }).getByRole("listitem");
  await expect(kept).toHaveCount(2);
  const said = await kept.last().getByRole("paragraph").first().innerText();
  await page.goto(enquiry);
  await expect(page.getByText(said)).toBeVisible();
  await expect(page.getByRole("main")).toContainText(/In one photo the affected spot is .* the untouched one \(ΔE00 \d+\.\d, standard uncertainty \d+\.\d\)/);
});

test("a reviewer marks small rectangles on a narrow screen: nothing covers what lies in them, and the grip outside stretches them", async ({ person }, info) => {
  const page = await person({ storageState: owner, viewport: { width: 390, height: 844 } });
  await opens(page);
  await page.getByRole("button", { name: "Compare another pair" }).click();
  await loaded(page);
  await click(page, 0.35, 0.7);
  await click(page, 0.6, 0.4);
  await page.getByRole("radio", { name: "Rectangle" }).check();
  const grip = page.getByRole("button", { name: /corner.*, \d+ % from the left/i }).last();
  const photo = await picture(page).boundingBox();
  const sides = async () => {
    const [, left, top] = /(\d+) % from the left, (\d+) % from the top/u.exec((await grip.getAttribute("aria-label")) ?? "") ?? [];
    return { left: Number(left), top: Number(top) };
  };
  const before = await sides();
  const box = await grip.boundingBox();
  if (!photo || !box) throw new Error("The photo and its grip are not on the page.");
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  // Its dot of 12 px lies outside of the corner, to the right and below.
  expect(x - 6 - photo.x).toBeGreaterThan((photo.width * before.left) / 100 + 1);
  expect(y - 6 - photo.y).toBeGreaterThan((photo.height * before.top) / 100 + 1);
  expect(await spot(page, "Affected spot").evaluate((button) => getComputedStyle(button, "::before").content)).toBe("none");
  await page.screenshot({ path: info.outputPath("rectangle-390.png") });
  await page.mouse.move(x + 4, y + 4);
  await page.mouse.down();
  await page.mouse.move(x + 4 + photo.width * 0.1, y + 4, { steps: 4 });
  await page.mouse.up();
  const after = await sides();
  expect(Math.abs(after.left - before.left - 10)).toBeLessThanOrEqual(1);
  expect(Math.abs(after.top - before.top)).toBeLessThanOrEqual(1);
  await expectAccessible(page);
});

test("a reviewer marks corners and damage by keyboard alone, chooses a cut-down, and prints the plan", async ({ person }, info) => {
  const page = await person({ storageState: owner });
  const enquiry = await opens(page);
  // The document that needs a plan says so, and leads here.
  await page.goto(enquiry);
  await page.getByText("Make a document").click();
  await expect(page.getByText("Not yet: its corners and its damage are not marked in a photo.")).toBeVisible();
  await page.getByRole("link", { name: "Mark them for the cut-down plan" }).click();
  await loaded(page);
  // A touch close to where a corner waits brings it there.
  await click(page, 0.165, 0.165);
  await expect(page.getByRole("button", { name: /^Corner 1, 1[67] % from the left, 1[67] % from the top/ })).toBeVisible();
  for (const n of [1, 2, 3, 4]) {
    await page.getByRole("button", { name: new RegExp(`^Corner ${n},`) }).focus();
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("ArrowRight");
  }
  await page.getByLabel("Width, cm").fill("170");
  await page.getByLabel("Length, cm").fill("24");
  await page.getByLabel("Length, cm").fill("240");
  await page.getByRole("radio", { name: "Damaged places" }).focus();
  await page.keyboard.press("Space");
  for (let n = 0; n < 3; n++) {
    await page.getByRole("button", { name: "Add a point" }).focus();
    await page.keyboard.press("Enter");
  }
  const third = page.getByRole("button", { name: /^Damaged place 1, point 3/ });
  await third.focus();
  for (let n = 0; n < 6; n++) await page.keyboard.press("Shift+ArrowDown");
  await expect(page.getByText(/^Damaged: about [\d,]+ cm²/)).toBeVisible();
  const plan = page.getByRole("img", { name: /^Plan of the rug from above, to scale: 170 × 240 cm/ });
  await expect(plan).toBeVisible();
  await page.getByRole("radio", { name: /^One edge comes off/ }).focus();
  await page.keyboard.press("Space");
  await expect(plan).toHaveAccessibleName(/One edge comes off: \d+ × \d+ cm remains\. The left edge lies towards the top of the photo\./);
  await expect(plan).toContainText("top of the photo");
  await expectAccessible(page);
  await page.getByRole("button", { name: "Keep this plan" }).click();
  await expect(page.getByText("The plan is kept, and the rug judged anew with it.")).toBeFocused();
  await page.getByRole("link", { name: "To print" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toContainText("Plan of");
  await expect(page.getByRole("img", { name: /The left edge lies towards the top of the photo/ }).last()).toContainText(/\d+ × \d+ cm170 cm240 cmtop of the photo/);
  await page.screenshot({ path: info.outputPath("plan-1280.png"), fullPage: true });
  await page.emulateMedia({ media: "print" });
  await expect(page.getByRole("region", { name: "One edge comes off" })).toContainText("Chosen");
  await expect(page.getByRole("button", { name: "Print this page" })).toBeHidden();
  if (hasPrograms("pdftotext")) {
    const reference = await page.locator("main .num").first().innerText();
    const sheets = await sheetsOf(page, info.outputPath("plan.pdf"));
    expect(sheets.length).toBeGreaterThan(1);
    for (const sheet of sheets) expect(sheet).toContain(reference);
  }
  await page.emulateMedia({ media: "screen" });
  await expectAccessible(page);
  await page.goto(enquiry);
  await expect(page.getByRole("main")).toContainText(/The rug was planned to be cut down, with \d\.?\d* m of new edges/);
});

test("a reviewer who begins the corners with the length finds the width along the right edge, and can swap it with one button", async ({ person }) => {
  const page = await person({ storageState: owner });
  await opens(page);
  await page.getByRole("link", { name: "Plan and cut-down" }).click();
  await loaded(page);
  const again = page.getByRole("button", { name: "Take it away" });
  await again.click();
  await expect(page.getByText("The plan no longer counts.")).toBeFocused();
  await page.reload();
  await loaded(page);
  await page.getByLabel("Width, cm").fill("170");
  await page.getByLabel("Length, cm").fill("240");
  // The rug stands upright in the photo, and its corners are touched from the top right down, along the length.
  const ratio = await picture(page).locator("img").evaluate((i: HTMLImageElement) => i.naturalWidth / i.naturalHeight);
  const half = 0.3 * (170 / 240) / ratio;
  for (const [x, y] of [[0.5 + half, 0.2], [0.5 + half, 0.8], [0.5 - half, 0.8], [0.5 - half, 0.2]] as const) await click(page, x, y);
  await expect(page.getByText(/agree on which edge is the width/)).toBeVisible();
  const first = page.getByRole("button", { name: /^Corner 1,/ });
  await expect(first).toHaveAccessibleName(/(79|80|81) % from the top/);
  await page.getByRole("button", { name: "Swap width and length" }).click();
  await expect(page.getByText(/says that width and length are the other way round/)).toBeVisible();
  // What a person chose stays, whatever is typed.
  await page.getByLabel("Length, cm").fill("245");
  await expect(page.getByText(/the other way round/)).toBeVisible();
  await page.getByLabel("Length, cm").fill("171");
  await expect(page.getByText(/does not show clearly which edge is the width/)).toBeVisible();
  await expectAccessible(page);
});

test("a homeowner whose plain rug shows one pale patch is proposed the two spots, and says yes", async ({ person }) => {
  const phone = await person(PHONE);
  await begin(phone, desk);
  await phone.goto(`${desk.url}/ask/photos`);
  const patch = { x: 0.45, y: 0.5, r: 0.33 };
  const bytes = await drawRug({ seed: 21, weave: "loomed", kind: "trouble", colours: ["#8b95a3", "#a7b0ba"], damage: { kind: "pale", ...patch } });
  await phone.locator("#gallery-trouble").setInputFiles({ name: "patch.jpg", mimeType: "image/jpeg", buffer: bytes });
  await phone.getByText("Show us a clean and a changed spot").click();
  await loaded(phone);
  await expect(phone.getByText("Are these two right?")).toBeVisible();
  // The changed one lies in the patch, the clean one outside of it, as it was drawn.
  const away = async (name: string) => {
    const [, x = "", y = ""] = /(\d+) % from the left, (\d+) % from the top/.exec((await spot(phone, name).getAttribute("aria-label")) ?? "") ?? [];
    return Math.hypot(Number(x) / 100 - patch.x, Number(y) / 100 - patch.y) / patch.r;
  };
  expect(await away("Changed spot")).toBeLessThan(0.7);
  expect(await away("Clean spot")).toBeGreaterThan(0.7);
  await phone.getByRole("button", { name: "Yes, these two" }).click();
  await expect(phone.getByText("You showed us a clean and a changed spot")).toBeVisible();
});

test("a client moves the spots on their own page and takes them back", async ({ person }) => {
  const phone = await person({ ...PHONE, storageState: client });
  await phone.goto(`${desk.url}/your-enquiry`);
  const fold = phone.getByText("You showed us a clean and a changed spot");
  await expect(fold).toContainText("Photo 1: The whole rug");
  await fold.click();
  await loaded(phone);
  await spot(phone, "Changed spot").focus();
  await phone.keyboard.press("ArrowUp");
  await phone.getByRole("button", { name: "Keep as they are now" }).click();
  await expect(phone.getByText("Kept.")).toBeVisible();
  await phone.getByRole("button", { name: "Take them back" }).click();
  await expect(phone.getByText("Show us a clean and a changed spot")).toBeVisible();
  await expect(phone.getByRole("main")).not.toContainText("ΔE00");
});

test("a client reads what they wrote and what we answered in the order it was said", async ({ person }) => {
  const phone = await person({ ...PHONE, storageState: client });
  await phone.goto(`${desk.url}/your-enquiry`);
  const write = async (text: string) => {
    await phone.getByLabel("Your message").fill(text);
    await phone.getByRole("button", { name: "Send the message" }).click();
    await expect(phone.getByRole("article").filter({ hasText: text })).toBeVisible();
  };
  await write("The mark is from a plant pot, I think.");
  await expect(phone.getByText("Our answer will stand here")).toBeVisible();
  await phone.getByText("What you answered").click();
  await expect(phone.getByRole("definition").first()).toBeVisible();
  await expect(phone.getByRole("main")).not.toContainText(/likely|per cent|read it (now|today|this week)/i);
  await expectAccessible(phone);
  const staff = await person({ storageState: owner });
  await holdFor(staff, "0", desk);
  await opens(staff).then((enquiry) => staff.goto(enquiry));
  const letter = staff.locator("textarea").first();
  await rewrite(letter, (now) => now.replace(ANSWER_HERE, "A plant pot would fit what we see."));
  await staff.getByRole("button", { name: "Approve and send" }).click();
  await expect.poll(() => desk.mails.length).toBeGreaterThan(1);
  await phone.reload();
  await write("Thank you, we will bring it in.");
  await expect(phone.getByRole("article")).toHaveCount(3);
  for (const [i, name] of [/^What you wrote on/, /^Our letter: /, /^What you wrote on/].entries()) await expect(phone.getByRole("article").nth(i)).toHaveAccessibleName(name);
  await expectAccessible(phone);
});
