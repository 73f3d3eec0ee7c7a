import path from "node:path";
import type { Page } from "@playwright/test";
import sharp from "sharp";
import { drawRug } from "../../prisma/demo/draw-rug";
import { expectAccessible } from "./axe";
import { badLine } from "./bad-line";
import { expect, test } from "./fixtures";
import { begin } from "./homeowner";
import { becomeOwner, PHONE, takesIn } from "./people";

const TAKEN = 'img[src^="/photos/"]';
const RUG = { seed: 41, weave: "knotted" as const, colours: ["#7d2e38", "#d8c7b0", "#2f3a4a"] };
const idsOn = (page: Page) => page.locator(TAKEN).evaluateAll((all) => all.map((img) => /photos\/([^/]+)\//.exec((img as HTMLImageElement).src)?.[1] ?? ""));
const fileOf = async (page: Page, url: string) => Buffer.from(await (await page.request.get(url)).body());
const shown = (page: Page, name: string) => page.screenshot({ path: path.resolve("test-results/looked-at", `${name}.png`), fullPage: true });

test("a homeowner hears that a photo is too dark while it is still being sent", async ({ frontDoor: desk, person }) => {
  const phone = await person(PHONE);
  await begin(phone, desk);
  let letGo = () => {};
  const held = new Promise<void>((resolve) => { letGo = resolve; });
  await phone.route("**/api/photos", async (route) => { await held; await route.continue(); });
  const dark = await drawRug({ ...RUG, kind: "whole", quality: "dark" }, 1200, 900);
  await phone.locator("#gallery-whole").setInputFiles({ name: "evening.jpg", mimeType: "image/jpeg", buffer: dark });
  const onItsWay = phone.getByRole("listitem").filter({ hasText: "evening.jpg" });
  await expect(onItsWay).toContainText("This photo is rather dark. Could you take it again in daylight");
  await expect(onItsWay.getByRole("progressbar")).toBeVisible();
  await expect(phone.locator(TAKEN)).toHaveCount(0);
  await expectAccessible(phone);
  await shown(phone, "dark-390");
  letGo();
  await expect(phone.getByText("Kept. This photo is rather dark.")).toBeVisible();
});

test("a homeowner who would leave the page while a photo is on its way is asked first, and afterwards is not", async ({ frontDoor: desk, person }) => {
  const phone = await person(PHONE);
  await begin(phone, desk);
  await phone.getByRole("heading", { level: 1 }).click(); // browsers ask only those who have touched the page
  await phone.route("**/api/photos", () => undefined);
  await phone.locator("#gallery-whole").setInputFiles({ name: "rug.jpg", mimeType: "image/jpeg", buffer: await drawRug({ ...RUG, kind: "whole" }, 1000, 750) });
  const onItsWay = phone.getByRole("listitem").filter({ hasText: "rug.jpg" });
  await expect(onItsWay.getByRole("progressbar")).toBeVisible();
  const asked: string[] = [];
  phone.on("dialog", (dialog) => { asked.push(dialog.type()); void dialog.accept(); });
  const anew = phone.waitForEvent("load");
  await phone.evaluate(() => location.reload());
  await anew;
  expect(asked).toEqual(["beforeunload"]);
  await expect(onItsWay).toHaveCount(0);
  await phone.getByRole("heading", { level: 1 }).click();
  await phone.reload();
  expect(asked).toEqual(["beforeunload"]);
});

test("a homeowner who thinks better of a photo leaves it out while it is sent, or takes it away afterwards", async ({ frontDoor: desk, person }) => {
  const phone = await person(PHONE);
  await begin(phone, desk);
  const photo = { name: "rug.jpg", mimeType: "image/jpeg", buffer: await drawRug({ ...RUG, kind: "whole" }, 1000, 750) };
  await phone.route("**/api/photos", () => undefined);
  await phone.locator("#gallery-whole").setInputFiles(photo);
  await phone.getByRole("button", { name: /^Leave it out.*rug\.jpg/ }).click();
  await expect(phone.getByRole("progressbar")).toHaveCount(0);
  await phone.unroute("**/api/photos");
  await phone.locator("#gallery-whole").setInputFiles(photo);
  await expect(phone.locator(TAKEN)).toHaveCount(1);
  await phone.getByRole("button", { name: /Take away/ }).click();
  await expect(phone.locator(TAKEN)).toHaveCount(0);
  await expect(phone.getByRole("heading", { name: "The whole rug" })).toBeFocused();
  await phone.reload();
  await expect(phone.locator(TAKEN)).toHaveCount(0);
});

test("a homeowner who sent a photo twice and takes the first away no longer hears that the other is there already", async ({ frontDoor: desk, person }) => {
  const phone = await person(PHONE);
  await begin(phone, desk);
  const photo = { name: "rug.jpg", mimeType: "image/jpeg", buffer: await drawRug({ ...RUG, kind: "whole" }, 1000, 750) };
  for (const sent of [1, 2]) {
    await phone.locator("#gallery-whole").setInputFiles(photo);
    await expect(phone.locator(TAKEN)).toHaveCount(sent);
  }
  const twin = phone.getByText("This looks like a photo we have already");
  await expect(twin).toBeVisible();
  await phone.getByRole("button", { name: /Take away/ }).first().click();
  await expect(phone.locator(TAKEN)).toHaveCount(1);
  await expect(twin).toHaveCount(0);
});

test.describe("on a bad line", () => {
  test.use({ expectedErrors: /net::ERR_/ });
  test("a homeowner who cannot take a photo away reads that it is still there, and takes it away a moment later", async ({ frontDoor: desk, person }) => {
    const phone = await person(PHONE);
    await begin(phone, desk);
    await phone.locator("#gallery-whole").setInputFiles({ name: "rug.jpg", mimeType: "image/jpeg", buffer: await drawRug({ ...RUG, kind: "whole" }, 1000, 750) });
    await expect(phone.locator(TAKEN)).toHaveCount(1);
    const cut = (url: URL) => url.pathname.startsWith("/ask");
    await phone.route(cut, (route) => (route.request().method() === "POST" ? route.abort() : route.continue()));
    await phone.getByRole("button", { name: /Take away/ }).click();
    const why = phone.getByRole("alert").filter({ hasText: "still with us" });
    await expect(why).toBeVisible();
    await expect(phone.locator(TAKEN)).toHaveCount(1);
    await shown(phone, "not-taken-away-390");
    await phone.unroute(cut);
    await phone.getByRole("button", { name: /Take away/ }).click();
    await expect(phone.locator(TAKEN)).toHaveCount(0);
    await expect(why).toHaveCount(0);
  });
  test("a homeowner sends twelve photos over a slow line that breaks, and each arrives once and in order", async ({ frontDoor: desk, person }) => {
    const line = await badLine(Number(new URL(desk.url).port), ["pass", "cut", "pass", "lose-answer", "pass"]);
    const phone = await person(PHONE);
    await begin(phone, { ...desk, url: `http://127.0.0.1:${line.port}` });
    // Each lighter than the one before, so that the order can be seen.
    const photo = async (n: number) => ({
      name: `IMG_${n}.jpg`, mimeType: "image/jpeg",
      buffer: await sharp({ create: { width: 500, height: 400, channels: 3, background: "#000", noise: { type: "gaussian", mean: 60 + 10 * n, sigma: 25 } } }).jpeg().toBuffer(),
    });
    await phone.locator("#gallery-trouble").setInputFiles(await Promise.all(Array.from({ length: 12 }, (_, n) => photo(n))));
    await expect(phone.locator(TAKEN)).toHaveCount(12, { timeout: 90_000 });
    expect(line.seen).toEqual(expect.arrayContaining(["cut", "lose-answer"]));
    await phone.reload();
    const ids = await idsOn(phone);
    expect(new Set(ids).size).toBe(12);
    const light = await Promise.all(ids.map(async (id) => (await sharp(await fileOf(phone, `${desk.url}/photos/${id}/320`)).stats()).channels[0]?.mean ?? NaN));
    expect(light).toEqual([...light].sort((a, b) => a - b));
    await line.stop();
  });
});

test("a caller's photos are added at the desk, a face in one is blurred, and the client sees the blurred one only", async ({ desk, person }) => {
  const nell = await person();
  await becomeOwner(nell, desk);
  const enquiry = await takesIn(nell, { name: "Wren Ashdown", email: "wren@mail.example", label: "100% viscose" }, desk);
  const squares = await sharp(Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="1600" height="1200"><defs><pattern id="p" width="40" height="40" patternUnits="userSpaceOnUse"><rect width="40" height="40" fill="#222"/><rect width="20" height="20" fill="#ddd"/></pattern></defs><rect width="1600" height="1200" fill="url(#p)"/></svg>')).jpeg().toBuffer();

  await test.step("she adds a photo that came by another way", async () => {
    await nell.locator("summary", { hasText: "Add a photo" }).click();
    await nell.getByLabel(/^Choose a photo.*The whole rug/).setInputFiles({ name: "from-messenger.jpg", mimeType: "image/jpeg", buffer: squares });
    await expect(nell.getByRole("link", { name: "The whole rug, open large" })).toBeVisible();
  });
  const [before = ""] = await idsOn(nell);

  await test.step("draws one area with the mouse and places another with the keyboard", async () => {
    await nell.getByRole("link", { name: "The whole rug, open large" }).click();
    await nell.getByRole("link", { name: "Blur a part" }).click();
    await expect(nell.getByRole("heading", { level: 1 })).toHaveText("Blur part of a photo");
    const box = await nell.getByAltText("The whole rug").boundingBox();
    if (!box) throw new Error("The picture has no place on the page.");
    await nell.mouse.move(box.x + box.width * 0.1, box.y + box.height * 0.1);
    await nell.mouse.down();
    await nell.mouse.move(box.x + box.width * 0.3, box.y + box.height * 0.3, { steps: 4 });
    await nell.mouse.up();
    await expect(nell.getByRole("button", { name: /^Area 1, 10 per cent from the left, 10 from the top, 20 wide, 20 high/ })).toBeVisible();
    await nell.getByRole("button", { name: "Add an area" }).focus();
    await nell.keyboard.press("Enter");
    const second = nell.getByRole("button", { name: /^Area 2/ });
    await second.focus();
    for (let n = 0; n < 10; n++) await nell.keyboard.press("ArrowRight");
    await nell.keyboard.press("Shift+ArrowDown");
    await expect(second).toHaveAccessibleName(/^Area 2, 60 per cent from the left, 40 from the top, 20 wide, 22 high/);
    await nell.getByRole("group", { name: "Area 2" }).getByLabel("% from the top").fill("60");
    await expect(second).toHaveAccessibleName(/60 from the top/);
    await expectAccessible(nell);
    await shown(nell, "blur-1280");
    await nell.emulateMedia({ colorScheme: "dark" });
    await shown(nell, "blur-1280-dark");
    await nell.setViewportSize({ width: 390, height: 844 });
    await shown(nell, "blur-390-dark");
    await nell.emulateMedia({ colorScheme: "light" });
    await shown(nell, "blur-390");
    await nell.setViewportSize({ width: 1280, height: 900 });
    await nell.getByRole("button", { name: "Blur for good" }).click();
    await expect(nell).toHaveURL(enquiry);
    await expect(nell.locator(TAKEN).first()).not.toHaveAttribute("src", new RegExp(before));
    await shown(nell, "desk-photo-1280");
  });

  await test.step("the client's page shows it blurred, in every size, and the old one nowhere", async () => {
    await expect.poll(() => desk.mails.length).toBeGreaterThan(0);
    const link = /https?:\/\/\S+\/e\/[\w-]+/.exec(desk.mails[0]?.mail.text ?? "")?.[0] ?? "";
    const phone = await person(PHONE);
    await phone.goto(link);
    const [id = ""] = await idsOn(phone);
    expect(id).not.toBe(before);
    for (const size of ["full", "1600", "320"]) {
      expect((await phone.request.get(`${desk.url}/photos/${before}/${size}`)).status()).toBe(404);
      const file = await fileOf(phone, `${desk.url}/photos/${id}/${size}`), { width, height } = await sharp(file).metadata();
      const contrast = async (left: number, top: number) => {
        const part = { left: Math.round(left * width), top: Math.round(top * height), width: Math.round(0.12 * width), height: Math.round(0.12 * height) };
        return (await sharp(await sharp(file).extract(part).png().toBuffer()).stats()).channels[0]?.stdev ?? NaN;
      };
      expect([await contrast(0.14, 0.14), await contrast(0.64, 0.64)].every((c) => c < 8), size).toBe(true);
      expect(await contrast(0.4, 0.2), size).toBeGreaterThan(25);
    }
  });
});
