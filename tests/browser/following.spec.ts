import type { Page } from "@playwright/test";
import { fitsAndIsAccessible } from "./axe";
import { expect, test } from "./fixtures";
import type { Desk } from "./harness";
import { ownDesk } from "./own-desk";
import { holdFor, linkSentTo, PHONE, rewrite, takesIn, type Session } from "./people";

// One desk of this file's own, whose letters leave at once.
let desk: Desk;
let owner: Session;

ownDesk((settled) => { ({ desk, owner } = settled); }, { first: (page, at) => holdFor(page, "0", at) });

const OPEN = "{Your answer to what they wrote}";
const letterOf = (page: Page) => page.getByLabel("Text of the reply");
const approve = (page: Page) => page.getByRole("button", { name: "Approve and send" });
const said = (page: Page) => page.getByRole("region", { name: "The letter" }).getByRole("status");
const lettersTo = (email: string) => desk.mails.filter((m) => m.to.includes(email)).map((m) => m.mail.text ?? "");

/** What is selected in the letter, and whether it is seen: in its field, in the window, and above the bar that stays. */
const chosenIn = (page: Page) => letterOf(page).evaluate((field: HTMLTextAreaElement) => {
  const words = field.value.slice(field.selectionStart, field.selectionEnd);
  const laid = document.createElement("div"), place = document.createElement("span");
  for (const name of ["font", "letterSpacing", "padding", "border", "boxSizing", "overflowWrap", "textIndent"] as const) laid.style[name] = getComputedStyle(field)[name];
  Object.assign(laid.style, { position: "fixed", left: "0", top: "0", visibility: "hidden", whiteSpace: "pre-wrap", width: `${field.clientWidth}px` });
  place.append(words);
  laid.append(field.value.slice(0, field.selectionStart), place);
  document.body.append(laid);
  const box = field.getBoundingClientRect(), { top, bottom } = place.getBoundingClientRect();
  laid.remove();
  const [from, to] = [top, bottom].map((at) => box.top + at - field.scrollTop) as [number, number];
  const bar = [...document.querySelectorAll("button")].find((b) => b.textContent === "Approve and send")?.getBoundingClientRect().top ?? innerHeight;
  return { words, isInView: from >= Math.max(box.top, 0) && to <= Math.min(box.bottom, innerHeight, bar) };
});

/** The size of the rug, as it turned out since. */
async function resizes(page: Page, at: string, width: string, length: string): Promise<void> {
  await page.goto(at);
  await page.getByRole("link", { name: "Correct or add an answer" }).click();
  await page.getByRole("link", { name: "How big is it?" }).click();
  await page.getByLabel("Width in cm").fill(width);
  await page.getByLabel("Length in cm").fill(length);
  await page.getByRole("button", { name: "Keep this answer" }).click();
  await expect(page).toHaveURL(new RegExp(`^${at}#told-`));
}

test("I answer a client's question without writing the whole letter again", async ({ person }) => {
  const email = "thora@mail.example";
  const page = await person({ storageState: owner });
  const at = await takesIn(page, { name: "Thora Lindgate", email, label: "100 % viscose" }, desk);
  await approve(page).click();
  await expect.poll(() => linkSentTo(desk, email)).not.toBe("");

  const phone = await person(PHONE);
  await phone.goto(linkSentTo(desk, email));
  await phone.getByLabel("Your message").fill("May I bring it on Thursday?");
  await phone.getByRole("button", { name: "Send the message" }).click();
  await expect(phone.getByText("May I bring it on Thursday?")).toBeVisible();

  await page.goto(at);
  await expect(page.getByRole("region", { name: "Since our last letter" })).toContainText("May I bring it on Thursday?");
  const short = `Dear Thora Lindgate,\n\nThank you for your message.\n\n${OPEN}\n\n`;
  await expect(letterOf(page)).toHaveValue(new RegExp(`^${short.replace(/[{}]/g, "\\$&")}`));
  await fitsAndIsAccessible(page);
  await page.screenshot({ path: test.info().outputPath("following-1280.png"), fullPage: true });
  const small = await person({ ...PHONE, storageState: owner });
  await small.goto(at);
  await expect(small.getByRole("region", { name: "Since our last letter" })).toBeVisible();
  await fitsAndIsAccessible(small);
  await small.getByRole("region", { name: "The letter" }).screenshot({ path: test.info().outputPath("following-390.png") });

  await test.step("it does not leave before the answer is written", async () => {
    await approve(page).click();
    await expect(said(page)).toContainText(`still has an open place: ${OPEN}`);
    await expect(letterOf(page)).toBeFocused();
  });
  await test.step("the whole letter is one press away, and back", async () => {
    await page.getByRole("button", { name: "Begin from the whole letter" }).click();
    await expect(letterOf(page)).toHaveValue(/viscose[\s\S]*hidden corner/);
    await page.getByRole("button", { name: "Back to what stood here" }).click();
    await expect(letterOf(page)).toHaveValue(new RegExp(OPEN.replace(/[{}]/g, "\\$&")));
  });
  await test.step("Write it brings the place into view and selects it, on a phone too", async () => {
    const short = await letterOf(page).inputValue();
    await rewrite(letterOf(page), () => `${"One line of a long letter.\n\n".repeat(40)}${short}\n\n${"One more line of a long letter.\n\n".repeat(40)}`);
    for (const [width, height] of [[1280, 800], [390, 700]] as const) {
      await page.setViewportSize({ width, height });
      await page.getByRole("button", { name: "Write it" }).click();
      await expect(letterOf(page)).toBeFocused();
      expect(await chosenIn(page)).toEqual({ words: OPEN, isInView: true });
      await page.screenshot({ path: test.info().outputPath(`write-it-${width}.png`) });
    }
    await page.setViewportSize({ width: 1280, height: 720 });
    await rewrite(letterOf(page), () => short);
  });
  await page.getByRole("button", { name: "Write it" }).click();
  await page.keyboard.type("Thursday suits us well, from eight o’clock on.");
  await expect(page.getByText("still open")).toHaveCount(0);
  await approve(page).click();
  await expect.poll(() => lettersTo(email).some((text) => text.includes("Thursday suits us well"))).toBe(true);
  const sent = lettersTo(email).find((text) => text.includes("Thursday suits us well")) ?? "";
  expect(sent).not.toMatch(/[{}]|hidden corner/);
});

test("A draft I edited tells me that the price has moved since", async ({ person }) => {
  const email = "osk@mail.example";
  const page = await person({ storageState: owner });
  const at = await takesIn(page, { name: "Osk Farthing", email, label: "100 % wool" }, desk);
  await resizes(page, at, "400", "500");
  await rewrite(letterOf(page), (now) => now.replace("With kind regards", "We close in August.\n\nWith kind regards"));
  await letterOf(page).press("Tab");
  await expect(said(page)).toHaveText("Kept.");
  await resizes(page, at, "100", "150");

  const moved = page.getByRole("group", { name: "What changed since this draft was written" });
  await expect(moved).toContainText("Since this draft was written, the assessment or the paragraphs changed.");
  await expect(moved.getByText("Price", { exact: true })).toBeVisible();
  await expect(letterOf(page)).toHaveValue(/We close in August/);
  await fitsAndIsAccessible(page);
  await page.screenshot({ path: test.info().outputPath("moved-1280.png"), fullPage: true });
  const phone = await person({ ...PHONE, storageState: owner });
  await phone.goto(at);
  await expect(phone.getByRole("group", { name: "What changed since this draft was written" })).toBeVisible();
  await fitsAndIsAccessible(phone);
  await phone.screenshot({ path: test.info().outputPath("moved-390.png"), fullPage: true });

  await approve(page).click();
  await expect(said(page)).toContainText("Nothing was sent: look at what changed first.");
  const was = await letterOf(page).inputValue();
  await moved.getByRole("button", { name: "Take it in: Price" }).click();
  await expect(letterOf(page)).toHaveValue(/We close in August/);
  await expect(letterOf(page)).not.toHaveValue(was);
  await expect(moved).toHaveCount(0);

  // Back to the old words, and left as they stand.
  await page.getByRole("button", { name: "Back to what stood here" }).click();
  await expect(letterOf(page)).toHaveValue(was);
  await moved.getByRole("button", { name: "I have looked: leave my words" }).click();
  await expect(said(page)).toHaveText("Looked at. The letter stays as it is written.");
  await expect(moved).toHaveCount(0);
  await approve(page).click();
  await expect.poll(() => lettersTo(email).some((text) => text.includes("We close in August."))).toBe(true);
});

test("After I took a new price in, the next letter does not tell my client again that it changed", async ({ person }) => {
  const email = "ingrith@mail.example";
  const page = await person({ storageState: owner });
  const phone = await person(PHONE);
  const writes = async (message: string) => {
    await phone.goto(linkSentTo(desk, email));
    await phone.getByLabel("Your message").fill(message);
    await phone.getByRole("button", { name: "Send the message" }).click();
    await expect(phone.getByText(message)).toBeVisible();
  };
  const at = await takesIn(page, { name: "Ingrith Vale", email, label: "100 % wool" }, desk);
  await resizes(page, at, "200", "300");
  await approve(page).click();
  await expect.poll(() => linkSentTo(desk, email)).not.toBe("");
  await writes("May I bring it on Thursday?");

  await page.goto(at);
  await rewrite(letterOf(page), (now) => now.replace(OPEN, "Thursday suits us well."));
  await letterOf(page).press("Tab");
  await expect(said(page)).toHaveText("Kept.");
  await resizes(page, at, "300", "400");
  const moved = page.getByRole("group", { name: "What changed since this draft was written" });
  await expect(moved).toContainText("Nothing was said.");
  await page.screenshot({ path: test.info().outputPath("taking-in-1280.png"), fullPage: true });
  await writes("And the fringe?");
  await page.goto(at);
  const wrote = page.getByRole("group", { name: /^Ingrith Vale wrote while this letter was being written/ });
  await expect(wrote).toContainText("It stands above.");
  const small = await person({ ...PHONE, storageState: owner });
  await small.goto(at);
  await expect(moved).toBeVisible();
  await fitsAndIsAccessible(small);
  await small.screenshot({ path: test.info().outputPath("taking-in-390.png"), fullPage: true });
  for (let left = await moved.getByRole("button", { name: /^Take it/ }).count(); left > 0; left -= 1) {
    await moved.getByRole("button", { name: /^Take it/ }).first().click();
    await expect(moved.getByRole("button", { name: /^Take it/ })).toHaveCount(left - 1);
  }
  await expect(letterOf(page)).toHaveValue(/Thursday suits us well\.\n\n[^]*our answer has changed[^]*Cleaning would cost/);
  await wrote.getByRole("checkbox").check();
  await approve(page).click();
  await expect.poll(() => lettersTo(email).some((text) => text.includes("our answer has changed"))).toBe(true);

  await writes("Thank you.");
  await page.goto(at);
  await expect(letterOf(page)).toHaveValue(/Thank you for your message\.\n\n\{Your answer/);
  await expect(letterOf(page)).not.toHaveValue(/has changed|replaces/);
});

test("I correct an answer after our letter left, see that it no longer holds, and write the letter that follows it", async ({ person }, info) => {
  const email = "ragna@mail.example";
  const page = await person({ storageState: owner });
  const at = await takesIn(page, { name: "Ragna Holt", email, label: "100 % viscose" }, desk);
  await approve(page).click();
  await expect.poll(() => linkSentTo(desk, email)).not.toBe("");
  await relabels(page, at, "100 % wool");
  await page.goto(`${desk.url}/desk`);
  const slip = page.getByRole("listitem").filter({ hasText: "our letter no longer holds" });
  await expect(slip).toHaveCount(1);
  const small = await person({ ...PHONE, storageState: owner });
  const outdated = (on: Page) => on.getByRole("region", { name: "Our letter no longer holds" });
  const isSeen = async (name: string) => {
    await page.screenshot({ path: info.outputPath(`${name}-queue-1280.png`) });
    for (const [on, width] of [[page, 1280], [small, 390]] as const) {
      await on.goto(at);
      await outdated(on).getByText("What it said, and would say now").click();
      await fitsAndIsAccessible(on);
      await outdated(on).scrollIntoViewIfNeeded();
      await on.screenshot({ path: info.outputPath(`${name}-${width}.png`) });
    }
  };
  await isSeen("outdated");
  await expect(outdated(page)).toContainText("The letter below takes its place.");
  await expect(outdated(page).getByRole("definition").filter({ hasText: "wool" })).not.toHaveCount(0);
  await expect(letterOf(page)).toHaveValue(/This replaces what we wrote before/);
  await approve(page).click();
  await expect.poll(() => lettersTo(email).filter((text) => text.includes("This replaces what we wrote before")).length).toBe(1);
  await page.goto(at);
  await expect(outdated(page)).toHaveCount(0);

  await test.step("where it is agreed it stays so, until I choose to write", async () => {
    await page.getByRole("radio", { name: "agreed" }).check();
    await page.getByRole("button", { name: "Move it" }).click();
    await expect(page.getByRole("status").filter({ hasText: "Moved: agreed." })).toBeVisible();
    await relabels(page, at, "100 % viscose");
    await isSeen("agreed");
    await expect(page.getByText(/· agreed ·/)).toBeVisible();
    await outdated(page).getByRole("button", { name: "Write what follows it" }).click();
    await expect(letterOf(page)).toHaveValue(/This replaces what we wrote before/);
  });
});

/** What its label says, as it turned out since. */
async function relabels(page: Page, at: string, label: string): Promise<void> {
  await page.goto(at);
  await page.getByRole("link", { name: "Correct or add an answer" }).click();
  await page.getByRole("link", { name: "Is there a label, and what does it say?" }).click();
  await page.getByRole("textbox").first().fill(label);
  await page.getByRole("button", { name: "Keep this answer" }).click();
  await expect(page).toHaveURL(new RegExp(`^${at}#told-`));
}
