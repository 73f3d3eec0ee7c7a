import { drawRug } from "../../prisma/demo/draw-rug";
import { letter } from "../unit/enquiry/mail-files";
import { fitsAndIsAccessible } from "./axe";
import { expect, test } from "./fixtures";
import type { Desk } from "./harness";
import { ownDesk } from "./own-desk";
import type { Page } from "@playwright/test";
import { holdFor, PHONE, takesIn, type Session } from "./people";

let desk: Desk;
let owner: Session;
ownDesk((settled) => { ({ desk, owner } = settled); }, { first: (page, settled) => holdFor(page, "0", settled) });

const WORDS = "I am her brother. The label says viscose.";
const written = (page: Page) => page.getByRole("region", { name: "The letter" }).getByRole("figure").filter({ hasText: WORDS });
const ofPeople = (email: string) => desk.mails.find((m) => m.to.includes(email) && m.mail.headers.get("auto-submitted") === undefined);

/** An enquiry whose letter went out, and an answer to it from an address that is not the client's. */
async function answeredFrom(page: Page, { name, email, from }: { name: string; email: string; from: string }): Promise<string> {
  const at = await takesIn(page, { name, email, label: "100 % wool" }, desk);
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect.poll(() => ofPeople(email)?.mail.messageId).toBeTruthy();
  const photo = await drawRug({ seed: 5, weave: "knotted", colours: ["#7d2e38", "#d8c7b0"], kind: "whole" }, 900, 675);
  const buffer = letter({ from, subject: "Re: Your rug", text: WORDS, answers: ofPeople(email)?.mail.messageId ?? "", photos: [photo], date: new Date() });
  await page.goto(`${desk.url}/desk/post`);
  await page.getByLabel("Choose letters").setInputFiles({ name: "answer.eml", mimeType: "message/rfc822", buffer });
  await expect(page.getByRole("listitem").filter({ hasText: "answer.eml" })).toContainText("Enquiry");
  await page.goto(at);
  return at;
}

test("I say by mistake that a stranger's message is my client's own, and take that back", async ({ person }) => {
  const page = await person({ storageState: owner });
  const at = await answeredFrom(page, { name: "Wilma Sorrel", email: "wilma@mail.example", from: "Gareth <gareth@other.example>" });
  await expect(written(page)).toContainText("From gareth@other.example, not the address we know.");
  await page.getByRole("button", { name: "It is Wilma Sorrel’s own" }).click();
  await expect(written(page)).toContainText("It came from gareth@other.example, and somebody here said that it is theirs");
  await expect(page.locator("main img[src^='/photos/']").first()).toBeVisible();
  await fitsAndIsAccessible(page);
  await page.screenshot({ path: test.info().outputPath("owned-1280.png"), fullPage: true });
  const phone = await person({ ...PHONE, storageState: owner });
  await phone.goto(at);
  await fitsAndIsAccessible(phone);
  await phone.getByRole("region", { name: "The letter" }).screenshot({ path: test.info().outputPath("owned-390.png") });

  await page.getByRole("button", { name: "It is not Wilma Sorrel’s own" }).click();
  await expect(written(page)).toContainText("From gareth@other.example, not the address we know.");
  await expect(page.locator("main img[src^='/photos/']")).toHaveCount(0);
  await expect(page.getByText("said that a message from another address is not the client’s own after all")).toBeVisible();
  await page.screenshot({ path: test.info().outputPath("not-theirs-1280.png"), fullPage: true });
  await phone.goto(at);
  await fitsAndIsAccessible(phone);
  await phone.getByRole("region", { name: "The letter" }).screenshot({ path: test.info().outputPath("not-theirs-390.png") });
});

test("I take a message out that answers our letter and is about another rug, and open an enquiry of its own with it", async ({ person }) => {
  const page = await person({ storageState: owner });
  const from = "osric@other.example";
  const at = await answeredFrom(page, { name: "Maud Ferring", email: "maud@mail.example", from: `Osric Dale <${from}>` });
  await page.getByRole("button", { name: "It belongs elsewhere" }).click();
  await expect(page).toHaveURL(/\/desk\/post\//);
  await expect(page.getByText(/It was taken out of [A-Z0-9]{2}-[A-Z0-9]{3}, where it does not belong\./)).toBeVisible();
  await fitsAndIsAccessible(page);
  await page.screenshot({ path: test.info().outputPath("taken-out-1280.png"), fullPage: true });
  const phone = await person({ ...PHONE, storageState: owner });
  await phone.goto(page.url());
  await fitsAndIsAccessible(phone);
  await phone.screenshot({ path: test.info().outputPath("taken-out-390.png"), fullPage: true });
  await page.getByRole("button", { name: "Open an enquiry with it" }).click();
  await expect(page.getByText("Osric Dale").first()).toBeVisible();
  await expect(page.locator("main img[src^='/photos/']").first()).toBeVisible();
  expect(page.url()).not.toBe(at);
  await expect.poll(() => desk.mails.some((m) => m.to.includes(from))).toBe(true);
  await page.goto(at);
  await expect(page.getByText(WORDS)).toHaveCount(0);
  await expect(page.getByText("took a message from another address out: it belongs elsewhere")).toBeVisible();
});
