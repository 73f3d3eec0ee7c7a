import type { Page } from "@playwright/test";
import { fitsAndIsAccessible } from "./axe";
import { expect, test } from "./fixtures";
import type { Caught, Desk } from "./harness";
import { holdFor, linkSentTo, OWNER, PHONE, settledDesk, SETTLE_MS, takesIn, type Session } from "./people";


// The frame of a letter lets no script run; the test runner tries to put one of its own into every frame.
test.use({ expectedErrors: /^Blocked script execution in '(about:blank|http:\/\/[\w.:]+\/preview\/[\w-]+)'/ });

let desk: Desk;
let owner: Session;

test.beforeAll(async ({ browser, database }) => {
  test.setTimeout(SETTLE_MS);
  ({ desk, owner } = await settledDesk({ browser, database }, { first: (page, at) => holdFor(page, "0", at) }));
});
test.afterAll(() => desk.stop());

const documents = (page: Page) => page.getByRole("region", { name: "Documents" });
const said = (page: Page) => page.getByRole("region", { name: "The letter" }).getByRole("status");
const arrivedAt = (address: string): Caught[] => desk.mails.filter((m) => m.to.includes(address) && m.mail.headers.get("auto-submitted") === undefined);
const email = (name: string) => `${name.toLowerCase().replaceAll(" ", ".")}@example.org`;
const takesAnEnquiryIn = (page: Page, name: string) => takesIn(page, { name, email: email(name), label: "100 % viscose" }, desk);

/** Opens the form of a document from the enquiry's page. */
async function opensForm(page: Page, name: string): Promise<void> {
  await documents(page).getByText("Make a document").click();
  await documents(page).getByRole("link", { name, exact: true }).click();
  await expect(page.getByRole("heading", { level: 1, name })).toBeVisible();
}

test("Staff make a condition report, read it in the page and send it with the letter", async ({ person }) => {
  const page = await person({ storageState: owner });
  await takesAnEnquiryIn(page, "Ottilie Marchbank");
  await expect(documents(page)).toContainText("None made yet.");
  await expect(documents(page)).toContainText("Not inspected, so a report on it is provisional.");
  await documents(page).getByRole("link", { name: "Record an inspection" }).click();
  await page.getByRole("button", { name: "Record this inspection" }).click();
  const wrong = page.getByRole("alert", { name: "Please look at this once more" });
  await expect(wrong).toContainText("Write what was seen.");
  await expect(wrong).toContainText("Say whether it is beyond economic repair.");
  await expect(page).toHaveTitle(/^Error: Inspection/);
  await page.getByLabel("What was seen").fill("The pile is distorted over a hand’s breadth.");
  await page.getByRole("radio", { name: "No", exact: true }).check();
  await page.getByRole("button", { name: "Record this inspection" }).click();
  await expect(documents(page)).toContainText(/Inspected by Nell Harrow on .*The pile is distorted/);

  await opensForm(page, "Condition report");
  await expect(page.getByRole("main")).toContainText("It goes by the inspection of Nell Harrow.");
  await page.getByLabel("The insurer’s reference").fill("CL/118");
  await page.getByRole("button", { name: "Make it" }).click();
  const report = page.getByRole("article", { name: /^Condition report/ });
  await expect(report).toContainText("Your reference: CL/118.");
  await expect(report).toContainText("Not beyond economic repair, in the judgement of Nell Harrow");
  await expect(report).toContainText("earns its living from cleaning and repairing rugs");
  await fitsAndIsAccessible(page);
  await page.getByRole("checkbox", { name: /Goes with the letter/ }).check();
  await expect(page.getByText("It goes with the letter.")).toBeVisible();
  const [, documentId = ""] = /made\/([\w-]+)/.exec(page.url()) ?? [];

  await page.getByRole("link", { name: "Back to the enquiry" }).click();
  const letter = page.getByRole("region", { name: "The letter" });
  await expect(letter.getByRole("link", { name: /^Condition report/ })).toBeVisible();
  await fitsAndIsAccessible(page);
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect.poll(() => arrivedAt(email("Ottilie Marchbank")).length).toBe(1);
  const [arrived] = arrivedAt(email("Ottilie Marchbank"));
  const made = await page.request.get(`${desk.url}/documents/${documentId}`);
  expect(made.headers()).toMatchObject({ "content-type": "application/pdf", "cache-control": "private, no-store" });
  expect(arrived?.mail.attachments.map((a) => [a.contentType, a.content.equals(Buffer.from([]))])).toEqual([["application/pdf", false]]);
  expect(arrived?.mail.attachments[0]?.content.equals(await made.body())).toBe(true);
  await page.reload();
  await expect(page.getByRole("article", { name: "Reply" }).getByRole("link", { name: /^Condition report/ })).toBeVisible();
  await expect(documents(page)).toContainText("went with a letter");
  const link = linkSentTo(desk, email("Ottilie Marchbank"));
  const client = await person(PHONE);
  expect((await client.request.get(`${desk.url}/documents/${documentId}`)).status()).toBe(401);
  await client.goto(link);
  const enclosed = client.getByRole("article", { name: /^Our letter/ }).getByRole("link", { name: /^Condition report/ });
  await expect(enclosed).toHaveAttribute("href", `/documents/${documentId}`);
  expect((await client.request.get(`${desk.url}/documents/${documentId}`)).status()).toBe(200);
  await fitsAndIsAccessible(client);
});

test("Staff send the letter tomorrow at eight", async ({ person }) => {
  const page = await person({ storageState: owner });
  await takesAnEnquiryIn(page, "Balthazar Quill");
  await page.getByText("Send it at a chosen time").click();
  await expect(page.getByLabel("Hour, at the workshop")).toHaveValue("08:00");
  const tomorrow = await page.getByLabel("Day").inputValue();
  await page.getByLabel("Day").fill("2020-01-01");
  await page.getByRole("button", { name: "Approve for then" }).click();
  await expect(said(page)).toContainText("That is past: at the workshop it is");
  await expect(page.getByLabel("Day")).toHaveAttribute("aria-invalid", "true");
  await expect(page.getByLabel("Day")).toHaveValue("2020-01-01");
  await fitsAndIsAccessible(page);
  await page.getByLabel("Day").fill(tomorrow);
  await page.getByRole("button", { name: "Approve for then" }).click();
  await expect(said(page)).toContainText("Approved.");
  await expect(page.getByRole("article", { name: "Reply" })).toContainText("Leaves tomorrow 08:00.");
  expect(arrivedAt(email("Balthazar Quill"))).toEqual([]);
  await page.getByRole("button", { name: "Take it back" }).click();
  await expect(page.getByRole("button", { name: "Approve and send" })).toBeVisible();
});

test("Staff see the letter as it will arrive and send themselves a test letter", async ({ person }) => {
  for (const [name, options] of [["Perpetua Vane", {}], ["Perpetua Fell", PHONE]] as const) {
    const page = await person({ ...options, storageState: owner });
    await takesAnEnquiryIn(page, name);
    await page.getByLabel("Text of the reply").fill("Dear Perpetua,\n\nPlease leave it flat.\n\nNell");
    await page.getByRole("button", { name: "See it as it will arrive" }).click();
    const window = page.getByRole("dialog", { name: "As it will arrive" });
    await expect(window).toContainText("Lantern Yard Rug Workshop");
    await expect(window).toContainText(email(name));
    const frame = window.frameLocator("iframe");
    await expect(frame.getByRole("main")).toContainText("Please leave it flat.");
    await window.getByRole("radio", { name: "On a phone" }).check();
    await expect.poll(async () => (await window.locator("iframe").boundingBox())?.width).toBeLessThanOrEqual(376);
    await window.getByRole("radio", { name: "As plain text" }).check();
    await expect(frame.locator("body")).toContainText("Dear Perpetua,");
    await expect(frame.getByRole("main")).toHaveCount(0);
    await fitsAndIsAccessible(page);
    await page.keyboard.press("Escape");
    await expect(window).toBeHidden();
    const before = arrivedAt(OWNER.email).length;
    await page.getByRole("button", { name: "Send myself a test" }).click();
    await expect(said(page)).toContainText(`A test went to ${OWNER.email}. The client got nothing.`);
    expect(arrivedAt(OWNER.email).length).toBe(before + 1);
    const mine = arrivedAt(OWNER.email).at(-1)?.mail;
    expect(mine?.subject).toMatch(/^\[Test\] /);
    expect(mine?.text).toContain("Please leave it flat.");
    expect(arrivedAt(email(name))).toEqual([]);
  }
});
