import { expect, test } from "./fixtures";
import { answer, becomeOwner, PHONE, rewrite } from "./people";
import { makePhotoFiles } from "./photo-files";

/** What the person at the desk adds to the draft. */
const OWN_WORDS = "Please ring me before noon if the colour begins to move.";

test.use({ expectedErrors: /415 \(Unsupported Media Type\)/ });

test("a homeowner asks, the workshop answers", async ({ desk, person }) => {
  const photos = await makePhotoFiles();
  const desktop = await person();
  const phone = await person(PHONE);

  await test.step("the owner sets up the desk; letters leave at once", async () => {
    await becomeOwner(desktop, desk);
    await desktop.getByRole("link", { name: "Settings" }).click();
    await desktop.getByLabel(/held/i).fill("0");
    await desktop.getByRole("button", { name: /keep|save/i }).click();
    await expect(desktop.getByRole("status")).toContainText(/kept|saved/i);
  });

  await test.step("a drink was spilled ten minutes ago: first aid comes before anything else", async () => {
    await phone.goto(desk.url);
    await phone.getByRole("link", { name: "Tell us about your rug" }).click();
    await answer(phone, "Yes, it is wet");
    await expect(phone.getByRole("heading", { level: 1 })).toHaveText("First, before anything else");
    await expect(phone.getByText(/press straight down/)).toBeVisible();
    await expect(phone.getByText(/socket, cable/)).toBeVisible();
    await phone.getByRole("link", { name: "I’ve done that, go on" }).click();
    await answer(phone, "Something happened to it just now");
  });

  await test.step("five photos, of which one is HEIC and one is refused", async () => {
    const choose = (kind: string) => phone.locator(`#gallery-${kind}`);
    await choose("whole").setInputFiles(photos.whole);
    await choose("label").setInputFiles(photos.label);
    await choose("back").setInputFiles(photos.back);
    await choose("trouble").setInputFiles([photos.trouble, photos.refused]);
    await expect(phone.locator('img[src^="/photos/"][src$="/320"]')).toHaveCount(4);
    const refused = phone.getByRole("listitem").filter({ hasText: "Not taken." });
    await expect(refused).toHaveCount(1);
    await expect(refused).toContainText("This is a GIF");
    await phone.getByRole("link", { name: "Go on" }).click();
  });

  await test.step("the questions, left once and taken up again on the same phone", async () => {
    await answer(phone, "There is no label");
    await answer(phone, "Silk");
    const at = phone.url();
    await phone.goto("about:blank");
    await phone.goto(`${desk.url}/ask`);
    await expect(phone).toHaveURL(at);
    await answer(phone, "A market or bazaar, or bought on a journey");
    await phone.getByLabel("The year").fill("1998");
    await phone.getByLabel("What it cost").fill("900");
    await answer(phone);
    await phone.getByLabel("Width in cm").fill("80");
    await phone.getByLabel("Length in cm").fill("300");
    await answer(phone);
    await answer(phone, "Light from one end, dark from the other");
    await answer(phone, "It goes when I stroke it back");
    await answer(phone, "Fine, and warm after a moment");
    await answer(phone, "The same pattern, knot by knot");
    await answer(phone, "The fringe grows out of the rug");
    await answer(phone, "Shiny and soft");
    await answer(phone, "Food or drink was spilled");
    await answer(phone, "Wine, red or white");
    await answer(phone, "Within the last hour");
    await answer(phone, "Blotted with a cloth or paper");
    await answer(phone, "I did, or someone at home");
    await answer(phone, "A ring or an edge around the place");
    await answer(phone, "Hardly");
    await answer(phone, "None of these");
    await answer(phone, "Older than twenty-five years");
    await answer(phone, "Keeping it: it means something to me");
    await phone.getByLabel("In your own words").fill("A whole glass of red wine, ten minutes ago.");
    await answer(phone);
    await phone.getByLabel("Your name").fill("Henrike Aldous");
    await phone.getByLabel("E-mail").fill("h.aldous@mail.example");
    await answer(phone);
  });

  const reference = await test.step("it is sent, and acknowledged by mail without a judgement", async () => {
    await phone.getByRole("checkbox").check();
    await phone.getByRole("button", { name: "Send to the workshop" }).click();
    await expect(phone.getByRole("heading", { level: 1 })).toHaveText("It is with us");
    const text = await phone.getByText(/[A-Z]\d-\d{3}/).first().innerText();
    await expect.poll(() => desk.mails.length).toBe(1);
    return /[A-Z]\d-\d{3}/.exec(text)?.[0] ?? "";
  });
  const [first] = desk.mails;
  const acknowledged = first?.mail;
  expect(first?.to).toEqual(["h.aldous@mail.example"]);
  expect(acknowledged?.headers.get("auto-submitted")).toBe("auto-replied");
  expect(acknowledged?.text).toContain(reference);
  expect(acknowledged?.text).not.toMatch(/probab|likely|per cent|silk/i);
  const link = /https?:\/\/\S+\/e\/\S+/.exec(acknowledged?.text ?? "")?.[0] ?? "";

  await test.step("at the desk it stands first and says why; the draft is edited and approved", async () => {
    await desktop.goto(`${desk.url}/desk`);
    const slip = desktop.getByRole("main").getByRole("listitem").first();
    await expect(slip).toContainText(reference);
    await expect(slip).toContainText(/wet/i);
    await slip.getByRole("link").first().click();
    await expect(desktop.locator('img[src^="/photos/"]').first()).toBeVisible();
    const letter = desktop.getByLabel(/letter|reply|text/i).and(desktop.locator("textarea"));
    await expect(letter).toHaveValue(/Henrike/);
    await rewrite(letter, (now) => `${now}\n\n${OWN_WORDS}`);
    await desktop.getByRole("button", { name: "Approve and send" }).click();
    await expect.poll(() => desk.mails.length).toBe(2);
  });

  await test.step("exactly one letter arrives, with the edited text, threaded to the acknowledgement", async () => {
    const [, reply] = desk.mails;
    expect(reply?.to).toEqual(["h.aldous@mail.example"]);
    expect(reply?.mail.text).toContain(OWN_WORDS);
    expect(reply?.mail.html).toContain(OWN_WORDS);
    expect(reply?.mail.inReplyTo).toBe(acknowledged?.messageId);
    expect([reply?.mail.references].flat()).toContain(acknowledged?.messageId);
  });

  await test.step("the client's own page shows it, also from another device by the link in the letter", async () => {
    await phone.goto(`${desk.url}/your-enquiry`);
    await expect(phone.getByText(OWN_WORDS)).toBeVisible();
    const tablet = await person();
    await tablet.goto(link);
    await expect(tablet).toHaveURL(`${desk.url}/your-enquiry`);
    await expect(tablet.getByText(OWN_WORDS)).toBeVisible();
  });
  expect(desk.mails).toHaveLength(2);
});
