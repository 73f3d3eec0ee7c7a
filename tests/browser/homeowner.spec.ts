import { writeFile } from "node:fs/promises";
import path from "node:path";
import sharp from "sharp";
import { expectAccessible } from "./axe";
import { expect, test } from "./fixtures";
import type { Desk } from "./harness";
import { alert, begin, giveContact, send } from "./homeowner";
import { answer, becomeOwner, PHONE } from "./people";

test.use({ expectedErrors: /415 \(Unsupported Media Type\)|429 \(Too Many Requests\)/ });

const TAKEN = 'img[src^="/photos/"]';
const lettersTo = (desk: Desk, address: string) => desk.mails.filter((m) => m.to.includes(address));

test("a homeowner who mistypes is told what to mend and loses nothing", async ({ frontDoor: desk, person }, info) => {
  const phone = await person(PHONE);
  await begin(phone, desk);
  const flat = await sharp({ create: { width: 900, height: 700, channels: 3, background: "#7d2e38" } }).jpeg().toBuffer();
  const photo = (n: number) => ({ name: `rug-${n}.jpg`, mimeType: "image/jpeg", buffer: flat });
  const notes = info.outputPath("notes.jpg");
  await writeFile(notes, "This is a text and no photo.");

  await test.step("a text that calls itself a photo is refused beside its name, and so is the thirteenth photo", async () => {
    await phone.locator("#gallery-label").setInputFiles(notes);
    const refused = phone.getByRole("listitem").filter({ hasText: "Not taken." });
    await expect(refused).toContainText(path.basename(notes));
    await refused.getByRole("button", { name: "Clear this note" }).click();
    await phone.locator("#gallery-whole").setInputFiles(Array.from({ length: 13 }, (_, n) => photo(n)));
    await expect(refused).toContainText("That is 12 photos already");
    await expect(phone.locator(TAKEN)).toHaveCount(12);
  });

  await test.step("letters in the price and a size below nothing: said beside the field, what was typed still stands", async () => {
    await phone.goto(`${desk.url}/ask/price`);
    await phone.getByLabel("The year").fill("2015");
    await phone.getByLabel("What it cost").fill("about five hundred");
    await phone.getByRole("button", { name: "Go on" }).click();
    await expect(alert(phone)).toContainText("We cannot read “about five hundred” as a price.");
    await expect(alert(phone)).toBeFocused();
    await expect(phone).toHaveTitle(/^Error: /);
    await expect(phone.getByLabel("What it cost")).toHaveValue("about five hundred");
    await expect(phone.getByLabel("The year")).toHaveValue("2015");
    await phone.getByLabel("The year").fill("about 2015");
    await phone.getByLabel("What it cost").fill("about £1,200");
    await answer(phone);
    await expect(phone.getByLabel("Width in cm")).toBeVisible();
    await phone.goto(`${desk.url}/ask/price`);
    await expect(phone.getByLabel("What it cost")).toHaveValue("1200");
    await expect(phone.getByLabel("The year")).toHaveValue("2015");
    await expect(phone.getByLabel("Currency")).toHaveValue("GBP");
    await answer(phone);
    await phone.getByLabel("Width in cm").fill("-80");
    await phone.getByRole("button", { name: "Go on" }).click();
    await expect(alert(phone)).toContainText("The width must be at least 20 cm (8 in).");
    await phone.getByLabel("Width in cm").fill("80");
    await phone.getByLabel("Length in cm").fill("300");
    await answer(phone);
  });

  await test.step("an address no letter can reach, and a telephone nobody can ring", async () => {
    await phone.goto(`${desk.url}/ask/contact`);
    await phone.getByLabel("Your name").fill("Wren Ashdown");
    await phone.getByLabel("E-mail").fill("wren@");
    await phone.getByLabel("Telephone").fill("call me");
    await phone.getByRole("button", { name: "Go on" }).click();
    await expect(alert(phone)).toContainText("Write an e-mail address like name@example.org.");
    await expect(alert(phone)).toContainText("Write the telephone number in figures, or leave it empty.");
    await expect(phone.getByLabel("Your name")).toHaveValue("Wren Ashdown");
    await phone.getByLabel("E-mail").fill("wren@mail.example");
    await phone.getByLabel("Telephone").fill("");
    await answer(phone);
  });

  await test.step("the browser is closed and opened again: everything stands on the last page; sent with two taps it is one enquiry", async () => {
    const later = await person({ ...PHONE, storageState: await phone.context().storageState() });
    await later.goto(`${desk.url}/ask`);
    await expect(later).toHaveURL(`${desk.url}/ask/send`);
    for (const kept of ["Twelve photos", "2015, £1,200", "80 × 300 cm (2 ft 7 in × 9 ft 10 in)", "Wren Ashdown, wren@mail.example"]) await expect(later.getByText(kept, { exact: true })).toBeVisible();
    await later.getByRole("button", { name: "Send to the workshop" }).click();
    await expect(alert(later)).toContainText("Tick the box");
    await later.getByRole("checkbox").check();
    await later.getByRole("button", { name: "Send to the workshop" }).dblclick();
    await expect(later.getByRole("heading", { level: 1 })).toHaveText("It is with us");
    await expect.poll(() => lettersTo(desk, "wren@mail.example").length).toBe(1);
    await later.goto(`${desk.url}/ask/send`);
    await expect(later).toHaveURL(`${desk.url}/ask/sent`);
  });
});

test("a homeowner with two rugs sends both, is asked nothing twice, and finds both on one page with one number", async ({ frontDoor: desk, person }, info) => {
  const phone = await person(PHONE);
  const number = phone.getByText("Your enquiry", { exact: true }).locator("..").getByRole("strong");
  await begin(phone, desk);
  await phone.goto(`${desk.url}/ask/size`);
  await phone.getByLabel("Width in cm").fill("170");
  await phone.getByLabel("Length in cm").fill("240");
  await answer(phone);
  await giveContact(phone, desk, { name: "Marlis Tove", email: "marlis@mail.example" });
  await expect(phone.getByText("Is there another rug?")).toBeVisible();
  await send(phone);
  const first = await number.innerText();
  await phone.getByRole("button", { name: "Add another rug" }).click();
  await expect(phone).toHaveURL(`${desk.url}/ask/wet-now`);
  await begin(phone, desk);
  await phone.goto(`${desk.url}/ask/size`);
  await phone.getByLabel("Width in cm").fill("80");
  await phone.getByLabel("Length in cm").fill("300");
  await answer(phone);
  await phone.goto(`${desk.url}/ask/story`);
  await phone.getByRole("button", { name: "Nothing to add" }).click();
  await expect(phone).toHaveURL(`${desk.url}/ask/send`);
  await expect(phone.getByText("Marlis Tove, marlis@mail.example")).toBeVisible();
  await send(phone);
  await expect(number).toHaveText(first);
  await phone.getByRole("link", { name: "See your page" }).click();
  await expect(phone.getByRole("heading", { level: 1 })).toHaveText("Your rugs");
  for (const size of [/170 × 240/, /80 × 300/]) await expect(phone.getByRole("heading", { level: 2, name: size })).toBeVisible();
  await phone.screenshot({ path: info.outputPath("two-rugs-390.png"), fullPage: true });
  await expectAccessible(phone);
  await expect.poll(() => lettersTo(desk, "marlis@mail.example").map(({ mail }) => mail.subject)).toEqual([`We have your enquiry ${first}`, `We have your enquiry ${first}`]);
});

test("a homeowner who does not know says so on every page and can still send", async ({ frontDoor: desk, person }) => {
  const phone = await person(PHONE);
  const unsure = async (step: string) => {
    await expect(phone).toHaveURL(`${desk.url}/ask/${step}`);
    await phone.getByText("I’m not sure", { exact: true }).click();
    if (step !== "price" && step !== "size") await phone.getByRole("button", { name: "Go on" }).click();
  };
  await phone.goto(`${desk.url}/ask/wet-now`);
  for (const step of ["wet-now", "reason"]) await unsure(step);
  await expect(phone).toHaveURL(`${desk.url}/ask/photos`);
  const dark = await sharp({ create: { width: 900, height: 700, channels: 3, background: "#060606" } }).jpeg().toBuffer();
  await phone.locator("#gallery-whole").setInputFiles({ name: "dark.jpg", mimeType: "image/jpeg", buffer: dark });
  await expect(phone.getByText(/^Kept\. /)).toBeVisible();
  await phone.getByRole("link", { name: "Go on" }).click();
  for (const step of ["label", "seller", "bought", "price", "size", "shine", "footprints", "touch", "back", "fringe", "happened", "changes", "room", "household", "age", "matters"]) await unsure(step);
  await phone.getByRole("button", { name: "Nothing to add" }).click();
  await expect(phone).toHaveURL(`${desk.url}/ask/contact`);
  await giveContact(phone, desk, { name: "Perrin Lowe", email: "perrin@mail.example" });
  await send(phone);
  await expect.poll(() => lettersTo(desk, "perrin@mail.example").length).toBe(1);
});

test("a homeowner whose rug has furry spots and may be wet reads of mould and of first aid as soon as it is sent", async ({ frontDoor: desk, person }, info) => {
  const phone = await person(PHONE);
  await phone.goto(`${desk.url}/ask/wet-now`);
  await answer(phone, "I’m not sure");
  await phone.goto(`${desk.url}/ask/happened`);
  await answer(phone, "Food or drink was spilled");
  await answer(phone, "Wine, red or white");
  await answer(phone, "Today");
  await phone.goto(`${desk.url}/ask/changes`);
  await answer(phone, "Furry or black spots");
  await giveContact(phone, desk, { name: "Ottoline Marsh", email: "ottoline@mail.example" });
  await send(phone);
  await expect(phone.getByRole("main")).toContainText("By what you told us there may be mould in the rug.");
  await phone.screenshot({ path: info.outputPath("sent-390.png"), fullPage: true });
  await expectAccessible(phone);
  await phone.getByRole("link", { name: "what to do until we answer" }).click();
  await expect(phone).toHaveURL(`${desk.url}/first-aid`);
});

test("a cleaner in a panic is told to ring first", async ({ desk, person }) => {
  const owner = await person();
  await becomeOwner(owner, desk);
  await owner.getByRole("link", { name: "Settings" }).click();
  await owner.getByLabel(/telephone/i).first().fill("01632 960 200");
  await owner.getByRole("button", { name: /keep|save/i }).click();
  await expect(owner.getByRole("status")).toContainText(/kept|saved/i);
  const phone = await person(PHONE);
  await phone.goto(`${desk.url}/ask/wet-now`);
  await answer(phone, "Damp, or wet underneath");
  await expect(phone.getByText(/Put nothing on it/)).toBeVisible();
  await phone.getByRole("link", { name: "I’ve done that, go on" }).click();
  await answer(phone, "I clean rugs myself and need advice");
  await expect(phone.getByRole("heading", { level: 1 })).toHaveText("Please ring us first");
  await expect(phone.getByRole("link", { name: "01632 960 200" })).toHaveAttribute("href", /^tel:/);
  await expect(phone.getByRole("main")).not.toContainText(/\bpH\b|acid|peroxide|solvent/i);
});
