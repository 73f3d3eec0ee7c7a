import { expectAccessible } from "./axe";
import { expect, test } from "./fixtures";
import type { Desk } from "./harness";
import { begin, giveContact, send } from "./homeowner";
import { ownDesk } from "./own-desk";
import { answer, PHONE, takesIn, type Session } from "./people";

// One desk of this file's own.
let desk: Desk;
let owner: Session;

ownDesk((settled) => { ({ desk, owner } = settled); });

test("staff add what the client told on the telephone, and the rug is judged anew", async ({ person }) => {
  const page = await person({ storageState: owner });
  const at = await takesIn(page, { name: "Odell Farrier", label: "100 % viscose" }, desk);
  await page.getByRole("link", { name: "Correct or add an answer" }).click();
  await expect(page.getByRole("heading", { name: "Correct or add an answer" })).toBeVisible();
  await expectAccessible(page);
  await page.getByRole("link", { name: "Is there a label, and what does it say?" }).click();
  await page.getByLabel("What the label says").fill("");
  await page.getByRole("button", { name: "Keep this answer" }).click();
  await expect(page.getByRole("alert", { name: "Please look at this once more" })).toContainText("Write what the label says, or choose another answer.");
  await page.getByLabel("What the label says").fill("100 % pure new wool");
  await page.getByRole("button", { name: "Keep this answer" }).click();
  await expect(page).toHaveURL(new RegExp(`^${at}#told-`));
  await expect(page.getByRole("region", { name: "As told" })).toContainText("100 % pure new wool");
  await expect(page.getByText("What speaks for wool")).toBeVisible();
  await expect(page.getByText("Nell Harrow corrected an answer")).toBeVisible();
});

test("a person on a phone changes the size of a rug, and nothing typed is lost when it is refused", async ({ person }) => {
  const page = await person({ ...PHONE, storageState: owner });
  const at = await takesIn(page, { name: "Wenna Treloar", label: "100 % wool" }, desk);
  await page.goto(at);
  await page.getByRole("link", { name: "Correct or add an answer" }).click();
  await page.getByRole("link", { name: "How big is it?" }).click();
  await page.getByLabel("Width in cm").fill("minus two");
  await page.getByLabel("Length in cm").fill("300");
  await page.getByRole("button", { name: "Keep this answer" }).click();
  await expect(page.getByRole("alert", { name: "Please look at this once more" })).toBeVisible();
  await expect(page.getByLabel("Length in cm")).toHaveValue("300");
  await expectAccessible(page);
  await page.getByLabel("Width in cm").fill("200");
  await page.getByRole("button", { name: "Keep this answer" }).click();
  await expect(page.getByText("200 × 300 cm.", { exact: true })).toBeVisible();
});

test("a homeowner writes that they gave a wrong answer, and whoever opens the enquiry is shown which one and corrects it", async ({ person }, info) => {
  test.setTimeout(120_000);
  const phone = await person(PHONE);
  await begin(phone, desk);
  await phone.goto(`${desk.url}/ask/happened`);
  await answer(phone, "Food or drink was spilled");
  await answer(phone, "Coffee or tea");
  await phone.goto(`${desk.url}/ask/label`);
  await phone.getByRole("radio", { name: /^Yes, it says/ }).check();
  await phone.getByLabel("What the label says").fill("100% silk");
  await answer(phone);
  await giveContact(phone, desk, { name: "Maren Oakley", email: "maren@example.org" });
  await phone.goto(`${desk.url}/ask/send`);
  await send(phone);
  await phone.goto(`${desk.url}/your-enquiry`);
  const writes = async (message: string) => {
    await phone.getByLabel("Your message").fill(message);
    await phone.getByRole("button", { name: "Send the message" }).click();
    await expect(phone.getByText("Your message is with us.")).toBeVisible();
  };
  await writes("Thank you for looking at it so soon.");
  await phone.reload();
  await writes("Sorry, one thing: it was red wine, not coffee!");
  const page = await person({ storageState: owner });
  await page.goto(`${desk.url}/desk/everything?text=Maren`);
  await page.getByRole("listitem").getByRole("link").first().click();
  await expect(page.getByText("Maren Oakley", { exact: true }).first()).toBeVisible();
  const pointers = page.getByText("This seems to correct an answer:").locator("..");
  // Beside the words wherever they stand, and beside no others.
  const written = page.getByRole("region", { name: "Written since" });
  await expect(written.getByRole("figure").filter({ hasText: "Thank you for looking" }).getByText("This seems to correct")).toHaveCount(0);
  await expect(written.getByRole("figure").filter({ hasText: "red wine" })).toContainText("This seems to correct an answer: What got on it, Coffee or tea.");
  await expectAccessible(page);
  await page.screenshot({ path: info.outputPath("correcting-1280.png"), fullPage: true });
  await page.setViewportSize({ width: 390, height: 844 });
  await page.screenshot({ path: info.outputPath("correcting-390.png"), fullPage: true });
  await page.setViewportSize({ width: 1280, height: 900 });
  await written.getByRole("link", { name: /^Correct it/ }).click();
  await page.getByText("Wine, red or white", { exact: true }).click();
  await page.getByRole("button", { name: "Keep this answer" }).click();
  await expect(page.getByRole("region", { name: "As told" })).toContainText("Wine, red or white");
  await expect(pointers).toHaveCount(0);
});
