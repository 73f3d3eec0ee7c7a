import { readFile, writeFile } from "node:fs/promises";
import os from "node:os";
import path from "node:path";
import { drawRug } from "../../prisma/demo/draw-rug";
import { letter } from "../unit/enquiry/mail-files";
import { expectAccessible, fitsAndIsAccessible } from "./axe";
import { expect, test } from "./fixtures";
import { becomeOwner, PHONE, takesIn } from "./people";

const rug = { seed: 23, weave: "knotted" as const, colours: ["#7d2e38", "#d8c7b0", "#2f3a4a"] };
const file = async (name: string, bytes: Buffer) => {
  const at = path.join(os.tmpdir(), `plainpile-${process.pid}-${name}`);
  await writeFile(at, bytes);
  return at;
};
const drawn = () => Promise.all([drawRug({ ...rug, kind: "whole" }, 900, 675), drawRug({ ...rug, kind: "trouble" }, 900, 675), drawRug({ ...rug, kind: "back" }, 900, 675)]);

test("Staff drop a saved letter on the desk and it becomes an enquiry with its photos", async ({ desk, page }) => {
  await becomeOwner(page, desk);
  await page.goto(`${desk.url}/desk/post`);
  await expect(page.getByRole("heading", { name: "Nothing waits in the Post" })).toBeVisible();
  const saved = await file("rug.eml", letter({ from: "Ottilie Marsh <ottilie@example.org>", subject: "My red rug after the coffee", text: "The coffee went over the edge this morning.", photos: await drawn(), date: new Date() }));
  // As a hand would drop it: the drop itself, with the file in it.
  const bytes = [...(await readFile(saved))];
  const carried = await page.evaluateHandle((all) => {
    const data = new DataTransfer();
    data.items.add(new File([new Uint8Array(all)], "rug.eml", { type: "message/rfc822" }));
    return data;
  }, bytes);
  await page.getByText("Drag letters here").dispatchEvent("drop", { dataTransfer: carried });
  const taken = page.getByRole("listitem").filter({ hasText: "rug.eml" });
  await expect(taken).toContainText("It is an enquiry now.");
  await expectAccessible(page);
  await taken.getByRole("link", { name: /Enquiry/ }).click();
  await expect(page).toHaveURL(/\/desk\/[0-9a-f-]{36}$/);
  await expect(page.getByText("Ottilie Marsh").first()).toBeVisible();
  await expect(page.getByText("by e-mail")).toBeVisible();
  const shown = await page.locator("main img[src^='/photos/']").evaluateAll((all) => all.map((img) => (img as HTMLImageElement).src.split("/")[4]));
  expect(new Set(shown).size).toBe(3);
  await page.getByText("My red rug after the coffee").last().click();
  await expect(page.getByRole("link", { name: "See it in the Post" })).toBeVisible();
  await expect.poll(() => desk.mails.map((m) => m.to[0])).toContain("ottilie@example.org");
  // The same file again is known, and makes nothing new.
  await page.goto(`${desk.url}/desk/post`);
  await page.getByLabel("Choose letters").setInputFiles(saved);
  await expect(page.getByRole("listitem").filter({ hasText: "rug.eml" })).toContainText("It was here already.");
});

test("I say what a photo shows that came by mail, and see the words of a letter that names nobody", async ({ desk, person, page }) => {
  await becomeOwner(page, desk);
  await page.goto(`${desk.url}/desk/post`);
  const [whole = Buffer.alloc(0)] = await drawn();
  const mailed = await file("mailed.eml", letter({ from: "Wystan Hale <wystan@example.org>", subject: "A faded runner", text: "It has faded by the window.", photos: [whole], date: new Date() }));
  const nobody = await file("nobody.eml", Buffer.from(letter({ subject: "The hall carpet", text: "The colour has run into the fringe.", photos: [Buffer.from("broken")] }).toString().replace(/^From: .*\r\n/u, "")));
  await page.getByLabel("Choose letters").setInputFiles([mailed, nobody]);
  await expect(page.getByRole("listitem").filter({ hasText: "nobody.eml" })).toContainText("It names no sender.");
  const enquiry = await page.getByRole("listitem").filter({ hasText: "mailed.eml" }).getByRole("link", { name: /Enquiry/ }).getAttribute("href");
  await page.getByRole("link", { name: "The hall carpet" }).click();
  const message = page.getByRole("article", { name: "The message" });
  await expect(message).toContainText("The colour has run into the fringe.");
  await expect(message).toContainText("photo-1.jpg: We do not recognise this as a photo.");
  await page.screenshot({ path: test.info().outputPath("nobody-1280.png"), fullPage: true });

  await page.goto(`${desk.url}${enquiry}`);
  const caption = page.locator("figcaption").first();
  await expect(caption).toContainText("A photo");
  await caption.getByRole("link", { name: "Measure" }).click();
  await expect(page.getByText("nobody has said yet what it shows")).toBeVisible();
  await fitsAndIsAccessible(page);
  await page.screenshot({ path: test.info().outputPath("shows-1280.png"), fullPage: true });
  const phone = await person({ ...PHONE, storageState: await page.context().storageState() });
  await phone.goto(page.url());
  await fitsAndIsAccessible(phone);
  await phone.screenshot({ path: test.info().outputPath("shows-390.png"), fullPage: true });
  await page.getByLabel("It shows").selectOption({ label: "The trouble" });
  await page.getByRole("button", { name: "Keep", exact: true }).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("The trouble");
  await expect(page.getByText("Kept. The rug was judged anew.")).toBeVisible();
});

test("I save a file that a client enclosed, alone and under its own name, and nobody else can", async ({ desk, person, page }) => {
  await becomeOwner(page, desk);
  await page.goto(`${desk.url}/desk/post`);
  const [whole = Buffer.alloc(0)] = await drawn();
  const valuation = Buffer.from("%PDF-1.7\n".padEnd(230_000, "v"));
  const saved = await file("files.eml", letter({
    from: "Hester Quill <hester@example.org>", subject: "A runner and its papers", text: "The valuation and what I know of it.", photos: [whole], date: new Date(),
    files: [
      { name: "valuation 2019.pdf", type: "application/pdf", bytes: valuation },
      { name: "its history.docx", type: "application/vnd.openxmlformats-officedocument.wordprocessingml.document", bytes: Buffer.alloc(2_400_000, "d") },
      { name: "notes.html", type: "text/html", bytes: Buffer.from("<script>document.title = 'run'</script>") },
    ],
  }));
  await page.getByLabel("Choose letters").setInputFiles(saved);
  await page.getByRole("listitem").filter({ hasText: "files.eml" }).getByRole("link", { name: /Enquiry/ }).click();
  const files = page.getByRole("list").filter({ has: page.getByRole("link", { name: "Save valuation 2019.pdf" }) });
  await expect(files.getByRole("listitem")).toHaveText(["Save valuation 2019.pdf 225 kB", "Save its history.docx 2.3 MB", "Save notes.html 1 kB"]);
  await fitsAndIsAccessible(page);
  await files.scrollIntoViewIfNeeded();
  await page.screenshot({ path: test.info().outputPath("enclosed-1280.png") });
  const phone = await person({ ...PHONE, storageState: await page.context().storageState() });
  await phone.goto(page.url());
  await fitsAndIsAccessible(phone);
  await phone.getByRole("link", { name: "Save notes.html" }).scrollIntoViewIfNeeded();
  await phone.screenshot({ path: test.info().outputPath("enclosed-390.png") });

  const coming = page.waitForEvent("download");
  await files.getByRole("link", { name: "Save valuation 2019.pdf" }).click();
  const download = await coming;
  expect(download.suggestedFilename()).toBe("valuation 2019.pdf");
  expect((await readFile(await download.path())).equals(valuation)).toBe(true);
  const address = `${desk.url}${await files.getByRole("link", { name: "Save notes.html" }).getAttribute("href")}`;
  const answer = await page.request.get(address);
  expect(answer.headers()).toMatchObject({ "content-type": "application/octet-stream", "content-disposition": "attachment; filename=\"enclosure\"; filename*=UTF-8''notes.html", "x-content-type-options": "nosniff", "cache-control": "private, no-store" });
  expect((await (await person()).request.get(address)).status()).toBe(401);
});

test("Staff read a letter that waits, with the keyboard, and put it to the enquiry it belongs to", async ({ desk, page }) => {
  await becomeOwner(page, desk);
  await takesIn(page, { name: "Ottilie Marsh", email: "ottilie@example.org", label: "100% viscose" }, desk);
  await page.goto(`${desk.url}/desk/post`);
  const saved = await file("more.eml", letter({ from: "Ottilie Marsh <ottilie@example.org>", subject: "One thing more", text: "It is from 2019.\r\n\r\nOn Friday, Lantern Yard wrote:\r\n> Dear Ottilie Marsh,", date: new Date() }));
  const odd = await file("odd.eml", Buffer.from([0, 255, 254, 128, 10, 13, 65]));
  await page.getByLabel("Choose letters").setInputFiles([saved, odd]);
  await expect(page.getByRole("listitem").filter({ hasText: "more.eml" })).toContainText("It waits for you.");
  await expect(page.getByRole("heading", { name: "Two wait in the Post" })).toBeVisible();
  await expect(page.getByRole("link", { name: "A message that could not be read" })).toBeVisible();
  await page.getByRole("link", { name: "One thing more" }).focus();
  await page.keyboard.press("Enter");
  await expect(page.getByRole("heading", { name: "One thing more" })).toBeVisible();
  // None of our letters is known in it, so words of hers may stand among what is folded: it is open.
  await expect(page.getByText("> Dear Ottilie Marsh,")).toBeVisible();
  await page.getByText("What it repeats of earlier letters").press("Enter");
  await expect(page.getByText("> Dear Ottilie Marsh,")).toBeHidden();
  await expectAccessible(page);
  // The address suggests; the person decides. A wrong number is told, and stays to be corrected.
  await page.getByRole("radio", { name: "another enquiry" }).check();
  await page.getByLabel("Number of the enquiry").fill("A0 000");
  await page.getByLabel("Number of the enquiry").press("Enter");
  await expect(page.getByRole("status").filter({ hasText: "There is no enquiry A0-000." })).toBeFocused();
  await expect(page.getByLabel("Number of the enquiry")).toHaveValue("A0 000");
  await page.getByRole("radio", { name: "another enquiry" }).press("ArrowUp");
  await page.getByRole("button", { name: "Put it there" }).press("Enter");
  await expect(page).toHaveURL(/\/desk\/[0-9a-f-]{36}$/);
  await expect(page.getByText("It is from 2019.").first()).toBeVisible();
});

test("A colleague on a phone puts a letter aside and takes it back out", async ({ desk, person, page }) => {
  await becomeOwner(page, desk);
  const phone = await person({ ...PHONE, storageState: await page.context().storageState() });
  await phone.goto(`${desk.url}/desk/post`);
  await phone.getByLabel("Choose letters").setInputFiles(await file("offer.eml", letter({ from: "Offers <offers@example.net>", subject: "An offer of brushes", date: new Date() })));
  await phone.getByRole("link", { name: "Read it" }).click();
  await phone.getByRole("button", { name: "Put it aside" }).click();
  await expect(phone.getByRole("heading", { name: "Nothing waits in the Post" })).toBeVisible();
  await phone.getByRole("link", { name: "An offer of brushes" }).click();
  await phone.getByRole("button", { name: "Take it back out" }).click();
  await expect(phone.getByRole("button", { name: "Open an enquiry with it" })).toBeVisible();
  await expectAccessible(phone);
  expect(await phone.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)).toBe(true);
});

test("A letter about a flood comes first, and whoever has read it puts it in its place", async ({ desk, page }) => {
  await becomeOwner(page, desk);
  await page.goto(`${desk.url}/desk/post`);
  const [whole = Buffer.alloc(0)] = await drawn();
  const [calm, flood, loose] = await Promise.all([
    file("calm.eml", letter({ from: "Ottilie Marsh <ottilie@example.org>", subject: "A question", text: "What is it made of?", photos: [whole], date: new Date() })),
    file("flood.eml", letter({ from: "Rowan Pell <rowan@example.org>", subject: "Help", text: "Our cellar was flooded in the night.", photos: [whole], date: new Date() })),
    file("loose.eml", letter({ from: "Juniper Vale <juniper@example.org>", subject: "My rug", text: "A pipe has burst over my rug!", date: new Date() })),
  ]);
  await page.getByLabel("Choose letters").setInputFiles([calm, flood, loose]);
  await expect(page.getByRole("listitem").filter({ hasText: "loose.eml" })).toContainText("It waits for you.");
  // Without a photo it waits in the Post, with its own words as the reason, and the queue says so at its head.
  await expect(page.getByRole("listitem").filter({ has: page.getByRole("link", { name: "My rug", exact: true }) })).toContainText("They write “A pipe has burst over my rug!”: read it now.");
  await page.goto(`${desk.url}/desk`);
  await expect(page.getByText("One message waits in the Post. They write “A pipe has burst over my rug!”: read it now.")).toBeVisible();
  const first = page.getByRole("region", { name: "Loses by the hour" });
  await expect(first).toContainText("They write “Our cellar was flooded in the night”: read it now.");
  await expectAccessible(page);
  await first.getByRole("link").first().click();
  const done = page.getByRole("button", { name: "I have read it: it can wait its turn" });
  await expect(done).toBeVisible();
  await expectAccessible(page);
  await done.press("Enter");
  await expect(page.getByText("Put in its place in the queue.")).toBeFocused();
  await expect(done).toBeHidden();
  await expect(page.getByText("Nobody has said whether it is wet; nothing else in it is lost by waiting.")).toBeVisible();
  await page.goto(`${desk.url}/desk`);
  await expect(page.getByRole("heading", { name: "Loses by the hour" })).toHaveCount(0);
});

test("I open an enquiry with a letter that names nobody by writing down who sent it, and see what can be made out of a file that is no message", async ({ desk, person, page }) => {
  await becomeOwner(page, desk);
  await page.goto(`${desk.url}/desk/post`);
  const nobody = await file("nameless.eml", Buffer.from(letter({ subject: "The stair runner", text: "It has run. Yours, Perrin Oake, 01632 960 114" }).toString().replace(/^From: .*\r\n/u, "")));
  const broken = await file("broken.eml", Buffer.concat([Buffer.from([0, 1, 2]), Buffer.from("Perrin Oake asks about the <b>stair runner</b>\n"), Buffer.from([0, 255])]));
  await page.getByLabel("Choose letters").setInputFiles([nobody, broken]);
  await expect(page.getByRole("listitem").filter({ hasText: "broken.eml" })).toContainText("It waits for you.");
  const phone = await person({ ...PHONE, storageState: await page.context().storageState() });

  await test.step("what is no message shows its size and its first words", async () => {
    await page.getByRole("link", { name: "A message that could not be read" }).click();
    const message = page.getByRole("article", { name: "The message" });
    await expect(message).toContainText("1 kB came.");
    await message.getByText("The first words that can be made out").click();
    await expect(message.locator("pre")).toHaveText("Perrin Oake asks about the <b>stair runner</b>");
    await fitsAndIsAccessible(page);
    await page.screenshot({ path: test.info().outputPath("raw-1280.png"), fullPage: true });
  });
  await page.goto(`${desk.url}/desk/post`);
  await page.getByRole("link", { name: "The stair runner" }).click();
  await page.getByLabel("Name", { exact: true }).fill("Perrin Oake");
  await page.getByRole("button", { name: "Open an enquiry with it" }).click();
  await expect(page.getByRole("alert", { name: "Please look at this once more" })).toContainText("Write an e-mail address or a telephone number");
  await expect(page.getByLabel("Name", { exact: true })).toHaveValue("Perrin Oake");
  await fitsAndIsAccessible(page);
  await page.screenshot({ path: test.info().outputPath("typed-1280.png"), fullPage: true });
  await phone.goto(page.url());
  await fitsAndIsAccessible(phone);
  await phone.screenshot({ path: test.info().outputPath("typed-390.png"), fullPage: true });
  await page.getByLabel("Telephone").fill("01632 960 114");
  await page.getByRole("button", { name: "Open an enquiry with it" }).click();
  await expect(page).toHaveURL(/\/desk\/[0-9a-f-]{36}$/);
  await expect(page.getByText("Perrin Oake").first()).toBeVisible();
  await expect(page.getByRole("link", { name: "01632 960 114" })).toBeVisible();
});
