import type { Locator, Page } from "@playwright/test";
import { expectAccessible } from "./axe";
import { expect, test } from "./fixtures";
import { alert, begin, giveContact, send } from "./homeowner";
import { answer, PHONE } from "./people";

/** Presses Tab until the control has the focus, as somebody without a mouse does. */
async function tabTo(page: Page, control: Locator): Promise<void> {
  const most = await page.locator("a, button, input, select, textarea").count();
  for (let i = 0; i <= most && !(await control.evaluate((e) => e === document.activeElement)); i++) await page.keyboard.press("Tab");
  await expect(control).toBeFocused();
}

test("a homeowner without a mouse comes from the front page to a sent enquiry by keyboard only", async ({ frontDoor: desk, person }) => {
  const page = await person();
  const press = async (control: Locator, key = "Enter") => {
    await tabTo(page, control);
    await page.keyboard.press(key);
  };
  const goOn = () => press(page.getByRole("button", { name: "Go on" }));
  await page.goto(desk.url);
  await press(page.getByRole("link", { name: "Tell us about your rug" }));
  await expect(page).toHaveURL(`${desk.url}/ask/wet-now`);
  await press(page.getByRole("radio", { name: /^Yes, it is wet/ }), "Space");
  await goOn();
  await expect(page).toHaveURL(`${desk.url}/ask/first-aid`);
  await press(page.getByRole("link", { name: "I’ve done that, go on" }));
  await expect(page).toHaveURL(`${desk.url}/ask/reason`);
  await press(page.getByRole("radio", { name: /^Something happened/ }), "ArrowDown");
  await expect(page.getByRole("radio", { name: /^It has a mark/ })).toBeChecked();
  await goOn();
  await expect(page).toHaveURL(`${desk.url}/ask/photos`);
  await tabTo(page, page.locator("#gallery-whole"));
  await press(page.getByRole("link", { name: "Send it as it is" }));
  await expect(page).toHaveURL(`${desk.url}/ask/contact`);
  await tabTo(page, page.getByLabel("Your name"));
  await page.keyboard.type("Noor Esk");
  await tabTo(page, page.getByLabel("E-mail"));
  await page.keyboard.type("noor@mail.example");
  await page.keyboard.press("Enter");
  await expect(page).toHaveURL(`${desk.url}/ask/send`);
  await press(page.getByRole("checkbox"), "Space");
  await press(page.getByRole("button", { name: "Send to the workshop" }));
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("It is with us");
});

test("a homeowner whose label gives the size finds it on the page that asks for it, says where it comes from, and may change it", async ({ frontDoor: desk, person }, info) => {
  const phone = await person(PHONE);
  await begin(phone, desk);
  await phone.goto(`${desk.url}/ask/size`);
  await expect(phone.getByLabel("Width in cm")).toHaveValue("");
  await phone.goto(`${desk.url}/ask/label`);
  await phone.getByRole("radio").first().check();
  await phone.getByRole("textbox").fill("100 % viscose\n160 x 230 cm");
  await answer(phone);
  await phone.goto(`${desk.url}/ask/size`);
  await expect(phone.getByText("The label says 160 × 230 cm.")).toBeVisible();
  await expect(phone.getByLabel("Width in cm")).toHaveValue("160");
  await expect(phone.getByLabel("Length in cm")).toHaveValue("230");
  await phone.screenshot({ path: info.outputPath("size-390.png"), fullPage: true });
  await expectAccessible(phone);
  await phone.getByLabel("Length in cm").fill("210");
  await answer(phone);
  await phone.goto(`${desk.url}/ask/size`);
  await expect(phone.getByLabel("Length in cm")).toHaveValue("210");
  await expect(phone.getByText("The label says")).toHaveCount(0);
});

test("a homeowner whose browser runs no script is told about mistakes and can send", async ({ frontDoor: desk, person }) => {
  const phone = await person({ ...PHONE, javaScriptEnabled: false });
  await begin(phone, desk);
  await expect(phone.getByText(/^Sending photos needs JavaScript/)).toBeVisible();
  await expect(phone.getByText(/^Choose a photo/).first()).toBeHidden();
  await phone.goto(`${desk.url}/ask/price`);
  await phone.getByLabel("What it cost").fill("many");
  await phone.getByRole("button", { name: "Go on" }).click();
  await expect(alert(phone)).toContainText("We cannot read “many” as a price.");
  await expect(phone.getByLabel("What it cost")).toHaveValue("many");
  await giveContact(phone, desk, { name: "Ines Harl", email: "ines@mail.example" });
  await send(phone);
  await phone.getByRole("link", { name: "See your page" }).click();
  await expect(phone).toHaveURL(`${desk.url}/your-enquiry`);
});

test("nothing runs over the edge of a small phone", async ({ frontDoor: desk, person }) => {
  const phone = await person({ ...PHONE, viewport: { width: 320, height: 640 }, colorScheme: "dark" });
  await begin(phone, desk);
  for (const at of ["", "first-aid", "privacy", "ask/wet-now", "ask/photos", "ask/price", "ask/size", "ask/shine", "ask/happened", "ask/contact", "ask/send"]) {
    await phone.goto(`${desk.url}/${at}`);
    expect(await phone.evaluate(() => document.documentElement.scrollWidth), at).toBeLessThanOrEqual(320);
  }
});

test("a homeowner who sees, hears or moves otherwise finds the same pages", async ({ frontDoor: desk, person }) => {
  const phone = await person(PHONE);
  await begin(phone, desk);
  const inBothLights = async () => {
    for (const colorScheme of ["light", "dark"] as const) {
      await phone.emulateMedia({ colorScheme, reducedMotion: "reduce" });
      await expectAccessible(phone);
    }
  };
  for (const at of ["", "ask/wet-now", "ask/photos", "ask/shine"]) {
    await phone.goto(`${desk.url}/${at}`);
    await inBothLights();
  }
  await phone.getByRole("button", { name: "Go on" }).click();
  await expect(alert(phone)).toBeVisible();
  await inBothLights();
  await giveContact(phone, desk, { name: "Sol Marchant", email: "sol@mail.example" });
  await send(phone);
  await phone.getByRole("link", { name: "See your page" }).click();
  await expect(phone).toHaveURL(`${desk.url}/your-enquiry`);
  await inBothLights();
});
