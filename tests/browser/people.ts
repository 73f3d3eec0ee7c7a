import { devices, expect, type Browser, type BrowserContext, type Locator, type Page } from "@playwright/test";
import { startDesk, type Desk } from "./harness";

export type Session = Awaited<ReturnType<BrowserContext["storageState"]>>;

/** A phone held upright. */
export const PHONE = { ...devices["Pixel 7"], viewport: { width: 390, height: 844 } };
export const OWNER = { name: "Nell Harrow", email: "nell@lantern-yard.example", password: "copper-thimble-osprey-71" };

/** The first person of a fresh desk sets name and password with the link the server printed, and comes in. */
export async function becomeOwner(page: Page, desk: Desk): Promise<void> {
  await page.goto(desk.ownerLink);
  await page.getByLabel("Your name").fill(OWNER.name);
  await page.getByLabel("E-mail address").fill(OWNER.email);
  await page.getByLabel("Password").fill(OWNER.password);
  await page.getByRole("button", { name: "Set name and password" }).click();
  await expect(page).toHaveURL(/\/desk$/);
}

interface Needs { readonly browser: Browser; readonly database: Parameters<typeof startDesk>[0] }
/** What a settled desk is to have. */
export interface Wishes {
  readonly colleagues?: readonly Parameters<typeof join>[2][];
  /** What the owner does first. */
  readonly first?: (page: Page, desk: Desk) => Promise<unknown>;
}

/** A desk of its own for the tests of one file, with its owner and the colleagues named. */
export async function settledDesk({ browser, database }: Needs, { colleagues = [], first }: Wishes = {}): Promise<{ desk: Desk; owner: Session; others: Session[] }> {
  const desk = await startDesk(database);
  try {
    const fresh = async () => (await browser.newContext()).newPage();
    const page = await fresh();
    await becomeOwner(page, desk);
    await first?.(page, desk);
    const others: Session[] = [];
    for (const colleague of colleagues) others.push(await join(page, await fresh(), colleague, desk));
    const owner = await page.context().storageState();
    await page.context().close();
    return { desk, owner, others };
  } catch (error) {
    await desk.stop();
    throw error;
  }
}

/** Sets how long an approved letter is held. */
export async function holdFor(page: Page, minutes: string, { url }: Desk): Promise<void> {
  await page.goto(`${url}/desk/settings`);
  await page.getByLabel("Minutes an approved letter is held").fill(minutes);
  await page.getByRole("button", { name: "Keep the settings" }).click();
  await expect(page.getByRole("status").filter({ hasText: "Kept." })).toBeVisible();
}

/** Writes a letter anew out of what stands in its field. A page that has only just come takes the field over while it is filled, and may leave both. */
export async function rewrite(letter: Locator, write: (now: string) => string): Promise<void> {
  const words = write(await letter.inputValue());
  await expect(async () => {
    await letter.fill(words);
    expect(await letter.inputValue()).toBe(words);
  }).toPass();
}

/** Chooses an answer by its label and goes on to the next page. */
export async function answer(page: Page, ...labels: string[]): Promise<void> {
  for (const label of labels) await page.getByText(label, { exact: true }).click();
  const before = page.url();
  await page.getByRole("button", { name: "Go on" }).click();
  await expect(page).not.toHaveURL(before);
}

/** The owner, on `from`, makes a link; the colleague opens it on a machine of their own and comes in. Closes `page`; gives the session. */
export async function join(from: Page, page: Page, colleague: { name: string; email: string; password: string; role: string }, { url }: Desk): Promise<Session> {
  await from.goto(`${url}/desk/people`);
  await from.getByLabel("E-mail address").fill(colleague.email);
  await from.getByLabel("Role", { exact: true }).selectOption({ label: colleague.role });
  await from.getByRole("button", { name: "Make a link" }).click();
  await page.goto(await from.getByRole("status").getByRole("code").innerText());
  await page.getByLabel("Your name").fill(colleague.name);
  await page.getByLabel("Password").fill(colleague.password);
  await page.getByRole("button", { name: "Set name and password" }).click();
  await expect(page).toHaveURL(/\/desk$/);
  const session = await page.context().storageState();
  await page.context().close();
  return session;
}

/** The client's own link, as it stood in a letter to them; empty while none has come. */
export const linkSentTo = ({ mails }: Desk, address: string): string =>
  mails.filter((m) => m.to.includes(address)).map((m) => /https?:\/\/\S+\/e\/[\w-]+/.exec(m.mail.text ?? "")?.[0]).find(Boolean) ?? "";

/** Takes an enquiry about a spill in by telephone; the address of its page. */
export async function takesIn(page: Page, { name, email, label, sold, reason, story }: { name: string; email?: string; label: string; /** What the seller called it, by its answer. */ sold?: string; /** Why they ring, by its answer. */ reason?: string; /** In their own words. */ story?: string }, { url }: Desk): Promise<string> {
  await page.goto(`${url}/desk/telephone`);
  await page.getByLabel("Name", { exact: true }).fill(name);
  if (email) await page.getByLabel("E-mail address").fill(email);
  await page.getByRole("radio", { name: "No, it is dry" }).check();
  await page.getByRole("checkbox", { name: "Food or drink was spilled" }).check();
  await page.getByLabel("The label, word for word").fill(label);
  if (reason) await page.getByRole("radio", { name: reason }).check();
  if (story) await page.getByLabel("In their own words").fill(story);
  if (sold) await page.getByRole("group", { name: /^It was called/ }).getByText(sold, { exact: true }).click();
  await page.getByRole("button", { name: "Take it in" }).click();
  await expect(page).toHaveURL(/\/desk\/[0-9a-f-]{36}$/);
  return page.url();
}
