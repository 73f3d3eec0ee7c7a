import { fitsAndIsAccessible } from "./axe";
import { expect, test } from "./fixtures";
import type { Desk } from "./harness";
import { ownDesk } from "./own-desk";
import { linkSentTo, PHONE, type Session } from "./people";

let desk: Desk;
let owner: Session;
ownDesk((settled) => { ({ desk, owner } = settled); });

test("A workshop that counts in feet takes a size down on the telephone as the caller says it, and is told where it is not understood", async ({ person }) => {
  const page = await person({ storageState: owner });
  await page.goto(`${desk.url}/desk/settings`);
  await page.getByLabel("Sizes and areas").selectOption("sqft");
  await page.getByLabel("Emergency number").fill("call grandma");
  await page.getByLabel("Cleaning, at least").fill("dear");
  await page.getByRole("button", { name: "Keep the settings" }).click();
  const wrong = page.getByRole("alert", { name: "Please look at this once more" });
  await expect(wrong).toContainText("Write the emergency number in figures, such as 112");
  await expect(wrong).toContainText("Cleaning, at least: write a number.");
  await expect(page.getByLabel("Sizes and areas")).toHaveValue("sqft");
  await page.getByLabel("Emergency number").fill("112");
  await page.getByLabel("Cleaning, at least").fill("90");
  await page.getByRole("button", { name: "Keep the settings" }).click();
  await expect(page.getByRole("status").filter({ hasText: "Kept." })).toBeVisible();

  await page.goto(`${desk.url}/desk/telephone`);
  await page.getByLabel("Name", { exact: true }).fill("Tamsin Rook");
  await page.getByLabel("Telephone", { exact: true }).fill("abc");
  await page.getByLabel("Width in feet").fill("3 yards");
  await page.getByLabel("Length in feet").fill("3,05 m");
  await page.getByRole("button", { name: "Take it in" }).click();
  await expect(wrong).toContainText("Write the telephone number in figures, or leave it empty.");
  await expect(wrong).toContainText("Write the width as a number, alone or with one of these units: mm, cm, m, ft, in.");
  await expect(page.getByLabel("Width in feet")).toHaveValue("3 yards");
  await fitsAndIsAccessible(page);
  await page.getByLabel("Telephone", { exact: true }).fill("01632 960 112");
  await page.getByLabel("Width in feet").fill("8");
  await page.getByRole("button", { name: "Take it in" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toContainText("Rug 8 ft × 10 ft");
});

test("On a phone the first aid stands under the question whether anything is wet, and of a dry rug only what people need", async ({ person }) => {
  const page = await person({ ...PHONE, storageState: owner });
  await page.goto(`${desk.url}/desk/telephone`);
  const aid = page.getByRole("complementary", { name: "First aid, to read out" });
  const top = async (what: typeof aid) => (await what.boundingBox())?.y ?? Number.NaN;
  expect(await top(aid)).toBeGreaterThan(await top(page.getByRole("radio", { name: "Yes, it is wet" })));
  expect(await top(aid)).toBeLessThan(await top(page.getByLabel("Name", { exact: true })));
  await page.getByRole("radio", { name: "Yes, it is wet" }).check();
  const forTheRug = aid.getByRole("heading", { name: "Then the rug" });
  await expect(forTheRug).toBeVisible();
  await fitsAndIsAccessible(page);
  await page.getByRole("radio", { name: "No, it is dry" }).check();
  await expect(forTheRug).toBeHidden();
  await expect(aid.getByText("call 112 now")).toBeVisible();
  await page.setViewportSize({ width: 1280, height: 900 });
  await expect(forTheRug).toBeVisible();
  expect(await top(aid)).toBeLessThan(await top(page.getByRole("radio", { name: "Yes, it is wet" })));
  await fitsAndIsAccessible(page);
});

test("What a client asked in their own words stands above the letter that has to answer it", async ({ person }, info) => {
  const page = await person({ storageState: owner });
  await page.goto(`${desk.url}/desk/telephone`);
  await page.getByLabel("Name", { exact: true }).fill("Odile Farthing");
  await page.getByRole("radio", { name: "No, it is dry" }).check();
  await page.getByLabel("The label, word for word").fill("100 % wool");
  await page.getByLabel("In their own words").fill("The tea is old. can it go in the bath? And will the shop have to pay?");
  await page.getByRole("button", { name: "Take it in" }).click();
  const asked = page.getByRole("region", { name: "What they ask" });
  await expect(asked.getByText("can it go in the bath?", { exact: true })).toBeVisible();
  await expect(asked.getByText("And will the shop have to pay?", { exact: true })).toBeVisible();
  await expect(asked).not.toContainText("The tea is old");
  await page.screenshot({ path: info.outputPath("asked-1280.png"), fullPage: true });
  await page.setViewportSize({ width: 390, height: 844 });
  await asked.screenshot({ path: info.outputPath("asked-390.png") });
  await fitsAndIsAccessible(page);
});

test("My caller tells of furry spots, and their own page warns of mould before anybody has answered; another caller's says nothing of it", async ({ person }, info) => {
  const page = await person({ storageState: owner });
  for (const [name, change] of [["bettan", "Furry or black spots"], ["corwin", "Browner or yellower than it was"]] as const) {
    await page.goto(`${desk.url}/desk/telephone`);
    await page.getByLabel("Name", { exact: true }).fill(name);
    await page.getByLabel("E-mail address").fill(`${name}@mail.example`);
    await page.getByRole("radio", { name: "No, it is dry" }).check();
    await page.getByRole("checkbox", { name: change }).check();
    await page.getByRole("button", { name: "Take it in" }).click();
    await expect.poll(() => linkSentTo(desk, `${name}@mail.example`)).not.toBe("");
    const phone = await person(PHONE);
    await phone.goto(linkSentTo(desk, `${name}@mail.example`));
    await expect(phone.getByRole("main")).toContainText("Our answer will stand here");
    await expect(phone.getByText("there may be mould in the rug")).toHaveCount(name === "bettan" ? 1 : 0);
    await phone.screenshot({ path: info.outputPath(`own-page-${name}-390.png`), fullPage: true });
    await fitsAndIsAccessible(phone);
  }
});
