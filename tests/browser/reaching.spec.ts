import type { Page } from "@playwright/test";
import { fitsAndIsAccessible } from "./axe";
import { expect, test } from "./fixtures";
import type { Desk } from "./harness";
import { ownDesk } from "./own-desk";
import { holdFor, linkSentTo, takesIn, type Session } from "./people";

let desk: Desk;
let owner: Session;

ownDesk((settled) => { ({ desk, owner } = settled); }, { first: (page, at) => holdFor(page, "0", at) });

const letters = (address: string) => desk.mails.filter((m) => m.to.includes(address) && m.mail.headers.get("auto-submitted") === undefined);
const form = { name: "Correct name, e-mail or telephone" };
const notDelivered = (page: Page) => page.getByRole("group", { name: "Not delivered" });
/** Both widths of the house: nothing sticks out and axe is content. */
async function looksRight(page: Page): Promise<void> {
  for (const width of [390, 1280]) {
    await page.setViewportSize({ width, height: 900 });
    await fitsAndIsAccessible(page);
  }
}
/** Opens the enquiry anew until it says what is looked for: a letter leaves by itself. */
const readsAnew = (page: Page, at: string, says: RegExp) => expect(async () => {
  await page.goto(at);
  await expect(page.getByRole("region", { name: "The letter" })).toContainText(says, { timeout: 1_000 });
}).toPass();

test("I correct a mistyped address and the letter goes to the new one", async ({ person }) => {
  const page = await person({ storageState: owner });
  const [wrong, right] = ["ottilie@exmaple.org", "ottilie@example.org"];
  const at = await takesIn(page, { name: "Ottilie Marchbank", email: wrong, label: "100 % viscose" }, desk);
  await readsAnew(page, at, /Our acknowledgement to ottilie@exmaple\.org could not be delivered/);
  await page.getByLabel("Text of the reply").fill("Dear Ottilie Marchbank,\n\nPlease keep it dry until we have seen it.");
  await page.getByRole("button", { name: "Approve and send" }).click();
  await readsAnew(page, at, /Our letter to ottilie@exmaple\.org could not be delivered/);
  await expect(notDelivered(page)).toContainText("refused before (550 5.1.1 no such mailbox)");
  await expect(page.getByLabel("Text of the reply")).toHaveValue(/Please keep it dry/);
  await looksRight(page);
  await page.goto(`${desk.url}/desk`);
  const slip = page.getByRole("listitem").filter({ hasText: "our letter could not be delivered" });
  await looksRight(page);
  await slip.getByRole("link").first().click();

  await notDelivered(page).getByRole("link", { name: "Correct the address" }).click();
  await expect(page.getByRole("heading", form)).toBeVisible();
  const address = page.getByLabel("E-mail address");
  await expect(address).toHaveValue(wrong);
  await address.fill("ottilie@");
  // No server took a letter there, so nobody is known to have a link.
  await expect(page.getByRole("checkbox", { name: /is not theirs/ })).not.toBeChecked();
  await page.getByRole("button", { name: "Keep this" }).click();
  await expect(page.getByRole("alert", { name: "Please look at this once more" })).toContainText("Write an e-mail address like name@example.org.");
  await expect(address).toHaveValue("ottilie@");
  await looksRight(page);
  await address.fill(right);
  await page.getByRole("button", { name: "Keep this" }).click();
  await expect(page.getByRole("status").filter({ hasText: `Corrected. The acknowledgement goes to ${right}, with a link to their own page.` })).toBeVisible();
  await looksRight(page);
  await expect.poll(() => linkSentTo(desk, right)).toContain("/e/");

  await page.getByRole("link", { name: "Back to the enquiry" }).click();
  await expect(notDelivered(page)).toContainText(`The address has been corrected since: what you send now goes to ${right}.`);
  await expect(page.getByText(`e-mail address from “${wrong}” to “${right}”`)).toBeVisible();
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect.poll(() => letters(right).length).toBe(1);
  expect(letters(right)[0]?.mail.text).toContain("Please keep it dry until we have seen it.");
  expect(letters(wrong)).toEqual([]);
  await page.goto(at);
  await expect(notDelivered(page)).toHaveCount(0);
});

test("I see why a letter has not left yet, and when it is tried again", async ({ person }) => {
  const page = await person({ storageState: owner });
  const at = await takesIn(page, { name: "Corin Ashdown", email: "corin@busy.example", label: "100 % wool" }, desk);
  await page.getByRole("button", { name: "Approve and send" }).click();
  await readsAnew(page, at, /tried once, and it is tried again\. The last try ended with: “451 4\.3\.0 too many letters, try later”\. Next try today \d\d:\d\d\./);
  await looksRight(page);
  await page.goto(`${desk.url}/desk/letters`);
  await expect(page.getByRole("listitem").filter({ hasText: "corin@busy.example" }).filter({ hasText: "Next try" }).first()).toContainText("too many letters, try later");
  await looksRight(page);
});

test("Two of us correct the same client, and what the second typed is neither lost nor laid over the first", async ({ person }) => {
  const [one, other] = [await person({ storageState: owner }), await person({ storageState: owner })];
  const at = await takesIn(one, { name: "Dagny Ferris", email: "dagny@example.org", label: "100 % wool" }, desk);
  await expect.poll(() => linkSentTo(desk, "dagny@example.org")).toContain("/e/");
  for (const page of [one, other]) await page.goto(`${at}/client`);
  // A letter was taken at this address, so the links that went there end unless somebody knows better.
  const isNotTheirs = one.getByRole("checkbox", { name: /is not theirs/ });
  await one.getByLabel("Telephone").fill("01632 960 111");
  await expect(isNotTheirs, "the address stays").toBeHidden();
  await one.getByLabel("Telephone").fill("");
  await one.getByLabel("E-mail address").fill("dagny.ferris@example.org");
  await expect(isNotTheirs).toBeChecked();
  await one.getByRole("button", { name: "Keep this" }).click();
  await expect(one.getByRole("status").filter({ hasText: "The links sent before open nothing any more." })).toBeVisible();
  await other.getByLabel("Telephone").fill("01632 960 112");
  await other.getByRole("button", { name: "Keep this" }).click();
  await expect(other.getByRole("alert", { name: "Please look at this once more" })).toContainText("It is now: Dagny Ferris, dagny.ferris@example.org, no telephone number.");
  await expect(other.getByLabel("Telephone")).toHaveValue("01632 960 112");
  await other.getByLabel("E-mail address").fill("dagny.ferris@example.org");
  await other.getByRole("button", { name: "Keep this" }).click();
  await expect(other.getByRole("status").filter({ hasText: "Corrected." })).toBeVisible();
  await other.goto(at);
  await expect(other.getByRole("link", { name: "01632 960 112" })).toBeVisible();
  await expect(other.getByRole("link", { name: "dagny.ferris@example.org" })).toBeVisible();
  const dead = await other.request.get(linkSentTo(desk, "dagny@example.org"));
  expect(await dead.text()).toContain("This link is too old");
});

test("I add the address of somebody who rang, and they get a link to their page and the letter that was to be read out", async ({ person }, info) => {
  const page = await person({ storageState: owner });
  const at = await takesIn(page, { name: "Wenna Trask", label: "100 % wool" }, desk);
  await page.getByRole("button", { name: "Ask for more" }).click();
  const question = page.getByLabel("Text of the question");
  await expect(question).toHaveValue(/Thank you for ringing us about your rug/);
  await expect(question).not.toHaveValue(/link/);
  await page.getByRole("button", { name: "Back to the reply" }).click();
  await page.getByRole("button", { name: "Approve and send" }).click();
  await readsAnew(page, at, /Ring them, and read it out/);
  await page.goto(`${at}/client`);
  const address = "wenna.trask@example.org";
  await page.getByLabel("E-mail address").fill(address);
  await page.getByRole("button", { name: "Keep this" }).click();
  await expect(page.getByRole("status").filter({ hasText: `Corrected. One letter that was to be read out goes to ${address} once the holding time is over. The acknowledgement goes to ${address}, with a link to their own page.` })).toBeVisible();
  await looksRight(page);
  await page.screenshot({ path: info.outputPath("given-address-1280.png"), fullPage: true });
  await expect.poll(() => linkSentTo(desk, address)).toContain("/e/");
  await expect.poll(() => letters(address).length).toBe(1);
  const [ack] = desk.mails.filter((m) => m.to.includes(address) && m.mail.headers.has("auto-submitted"));
  expect(ack?.mail.text).toContain("Thank you for ringing us");
  for (const { mail } of desk.mails.filter((m) => m.to.includes(address))) expect(mail.inReplyTo).toBeUndefined();
  await readsAnew(page, at, /Sent\./);
  await expect(page.getByText("let the letter that was to be read out go by e-mail")).toBeVisible();
  await page.goto(`${desk.url}/desk/letters`);
  await expect(page.getByRole("listitem").filter({ hasText: "Wenna Trask" }).filter({ hasText: "Not sent" })).toHaveCount(0);
});

test("My letters do not get through: one I give up and write anew, of the other I ring the client and say so", async ({ person }, info) => {
  const page = await person({ storageState: owner });
  const stands = page.getByRole("group", { name: "Where the letter stands" });
  const putOff = async (name: string, email: string) => {
    const at = await takesIn(page, { name, email, label: "100 % wool" }, desk);
    await page.getByRole("button", { name: "Approve and send" }).click();
    await readsAnew(page, at, /tried once, and it is tried again/);
  };
  await putOff("Perran Hale", "perran@busy.example");
  await looksRight(page);
  await page.screenshot({ path: info.outputPath("tried-again-1280.png") });
  await page.setViewportSize({ width: 390, height: 844 });
  await page.getByRole("region", { name: "The letter" }).screenshot({ path: info.outputPath("tried-again-390.png") });
  await page.setViewportSize({ width: 1280, height: 900 });
  await page.getByRole("button", { name: "Do not try it again" }).click();
  await expect(notDelivered(page)).toContainText("Not sent: it was given up here.");
  await expect(page.getByRole("button", { name: "Approve and send" })).toBeVisible();
  await expect(page.getByRole("button", { name: "Ask for more" })).toBeVisible();
  await expect(page.getByText("gave up a letter that did not get through")).toBeVisible();
  await looksRight(page);
  await page.screenshot({ path: info.outputPath("given-up-1280.png") });
  await page.setViewportSize({ width: 390, height: 844 });
  await page.getByRole("region", { name: "The letter" }).screenshot({ path: info.outputPath("given-up-390.png") });
  await page.goto(`${desk.url}/desk`);
  await expect(page.getByRole("listitem").filter({ hasText: "our letter did not get through" })).toHaveCount(1);

  await putOff("Jory Hale", "jory@busy.example");
  await page.getByRole("button", { name: "I rang and read it out" }).click();
  await expect(stands).toContainText("Read out on the telephone.");
  await expect(stands).toBeFocused();
  await expect(page.getByRole("button", { name: "Do not try it again" })).toHaveCount(0);
});

test("My letter is refused by the other server: I ring the client, say that I read it out, and it is their turn", async ({ person }, info) => {
  const page = await person({ storageState: owner });
  const stands = page.getByRole("group", { name: "Where the letter stands" });
  const at = await takesIn(page, { name: "Sennen Carlyon", email: "sennen@exmaple.org", label: "100 % wool" }, desk);
  await readsAnew(page, at, /Our acknowledgement to sennen@exmaple\.org could not be delivered/);
  // Nobody rings to read out what the program wrote.
  await expect(notDelivered(page).getByRole("button", { name: "I rang and read it out" })).toHaveCount(0);
  await page.getByRole("button", { name: "Approve and send" }).click();
  await readsAnew(page, at, /Our letter to sennen@exmaple\.org could not be delivered/);
  await expect(page.getByRole("region", { name: "The letter" }).getByText("Approved.", { exact: true })).toHaveCount(0);
  await looksRight(page);
  await page.screenshot({ path: info.outputPath("refused-1280.png") });
  await page.setViewportSize({ width: 390, height: 844 });
  await page.getByRole("region", { name: "The letter" }).screenshot({ path: info.outputPath("refused-390.png") });
  await page.setViewportSize({ width: 1280, height: 900 });
  await notDelivered(page).getByRole("button", { name: "I rang and read it out" }).click();
  await expect(stands).toContainText("Read out on the telephone.");
  await expect(notDelivered(page)).toHaveCount(0);
  await expect(page.getByText("rang the client and read the letter out")).toBeVisible();
  await expect(page.getByRole("button", { name: "Approve and send" })).toHaveCount(0);
  await page.screenshot({ path: info.outputPath("read-out-1280.png") });
});
