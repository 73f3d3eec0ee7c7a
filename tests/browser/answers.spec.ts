import { expectAccessible } from "./axe";
import { expect, test } from "./fixtures";
import type { Desk } from "./harness";
import { ownDesk } from "./own-desk";
import { PHONE, takesIn, type Session } from "./people";

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
