import sharp from "sharp";
import { seeded } from "../../prisma/demo/canvas";
import { conditionsOf } from "../labels/conditions";
import { drawLabel } from "../labels/draw";
import { TYPEFACES } from "../labels/typefaces";
import { expectAccessible } from "./axe";
import { expect, test } from "./fixtures";
import { begin, giveContact, send } from "./homeowner";
import { becomeOwner, PHONE } from "./people";

const random = seeded(3);
const drawn = drawLabel(random, { language: "en", lines: ["80% WOOL", "20% VISCOSE"], says: [] }, TYPEFACES[6]!, conditionsOf(random, "clean"));
const label = () => sharp(drawn.data, { raw: { width: drawn.width, height: drawn.height, channels: 3 } }).jpeg({ quality: 90 }).toBuffer();
/** A reading takes a second or some on a busy machine, the first one longer. */
const READ = { timeout: 60_000 };

test("A homeowner photographs the label, sees what was read and says it is right; staff see it and put it right", async ({ desk, person }, info) => {
  test.setTimeout(240_000);
  const phone = await person(PHONE);
  await begin(phone, desk);
  await phone.goto(`${desk.url}/ask/photos`);
  await phone.locator("#gallery-label").setInputFiles({ name: "label.jpg", mimeType: "image/jpeg", buffer: await label() });
  const question = phone.getByRole("group", { name: "Is this right?" });
  await expect(question).toBeVisible(READ);
  await expect(phone.getByText("80% WOOL")).toBeVisible();
  await expect(phone.locator("mark")).toHaveText(["WOOL", "VISCOSE"]);
  await expectAccessible(phone);
  await phone.screenshot({ path: info.outputPath("label-390.png"), fullPage: true });
  await question.getByRole("button", { name: "Yes, that is what it says" }).press("Enter");
  await expect(phone.getByText("This is what the label says. Thank you.")).toBeFocused();
  await giveContact(phone, desk, { name: "Wren Ashdown", email: "wren@example.org" });
  await phone.goto(`${desk.url}/ask/send`);
  await send(phone);

  const page = await person();
  await becomeOwner(page, desk);
  await page.goto(`${desk.url}/desk`);
  await page.getByRole("link", { name: "A rug, a mark or damage" }).click();
  const seen = page.getByRole("heading", { name: "The label in the photo" }).locator("..");
  await expect(seen).toContainText("This is what the label says.");
  await seen.getByRole("button", { name: "Correct the words" }).click();
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
