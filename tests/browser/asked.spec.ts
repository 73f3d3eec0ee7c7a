import type { Page } from "@playwright/test";
import { fitsAndIsAccessible } from "./axe";
import { expect, test } from "./fixtures";
import type { Desk } from "./harness";
import { ownDesk } from "./own-desk";
import { PHONE, takesIn, type Session } from "./people";

let desk: Desk;
let owner: Session;

ownDesk((settled) => { ({ desk, owner } = settled); });

const SAYS_SILK = { label: "100 % viscose", sold: "Silk" };
const asked = (page: Page) => page.getByRole("region", { name: "What they ask" });
const tick = (page: Page) => page.getByRole("checkbox", { name: "I have read what they ask; the letter answers it or says when we will" });
const send = (page: Page) => page.getByRole("button", { name: "Approve and send" });
const isApproved = (page: Page) => expect(page.getByRole("button", { name: "Take it back" })).toBeVisible();

test("My client asks whether we collect and the letter does not say: it does not leave before I have looked, and what it answers is named", async ({ person }) => {
  const page = await person({ storageState: owner });
  const at = await takesIn(page, { name: "Delphine Orr", email: "delphine@mail.example", ...SAYS_SILK, story: "It was my aunt's. Is it really silk? Do you collect from Nether Hallow, and what would that cost?" }, desk);
  await expect(asked(page).getByRole("listitem")).toHaveText([
    /^Is it really silk\?\s*Answered by: What it is, and how sure$/,
    /^Do you collect from Nether Hallow, and what would that cost\?\s*See that the letter answers it, or says when we will\.$/,
  ]);
  await send(page).click();
  await expect(page.getByRole("status").filter({ hasText: "Delphine Orr asks “Do you collect from Nether Hallow, and what would that cost?”" })).toBeVisible();
  await expect(tick(page)).toBeFocused();
  await fitsAndIsAccessible(page);
  await page.screenshot({ path: test.info().outputPath("asked-1280.png") });
  await test.step("on a phone it stands beside the letter too", async () => {
    const phone = await person({ ...PHONE, storageState: owner });
    await phone.goto(at);
    await send(phone).click();
    await expect(tick(phone)).toBeFocused();
    const [its, bar] = [await tick(phone).boundingBox(), await send(phone).boundingBox()];
    expect((its?.y ?? 0) + (its?.height ?? 0), "not under the bar that stays").toBeLessThan(bar?.y ?? 0);
    await fitsAndIsAccessible(phone);
    await phone.getByRole("region", { name: "The letter" }).screenshot({ path: test.info().outputPath("asked-390.png") });
  });
  await page.keyboard.press("Space");
  await expect(tick(page)).toBeChecked();
  await send(page).click();
  await isApproved(page);
  await expect(asked(page)).toHaveCount(0);
  await expect(page.getByText("approved the reply, having read one question that it does not plainly answer")).toBeVisible();
});

test("All that my client asks the letter answers: I send it with one press, and am asked once I take an answer out", async ({ person }) => {
  const page = await person({ storageState: owner });
  await takesIn(page, { name: "Quentin Ashby", email: "quentin@mail.example", ...SAYS_SILK, story: "Is it really silk? Can it be saved?" }, desk);
  await expect(asked(page).getByText("Answered by:")).toHaveCount(2);
  await expect(tick(page)).toHaveCount(0);
  const letter = page.getByLabel("Text of the reply");
  const whole = await letter.inputValue();
  await letter.fill(whole.replace(/Going by[^]*?\n\n/, ""));
  await expect(tick(page)).toBeVisible();
  await letter.fill(whole);
  await expect(tick(page)).toHaveCount(0);
  await send(page).click();
  await isApproved(page);
});
