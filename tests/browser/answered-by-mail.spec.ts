import { letter } from "../unit/enquiry/mail-files";
import { fitsAndIsAccessible } from "./axe";
import { expect, test } from "./fixtures";
import type { Desk } from "./harness";
import { ownDesk } from "./own-desk";
import { holdFor, PHONE, takesIn, type Session } from "./people";

let desk: Desk;
let owner: Session;
ownDesk((settled) => { ({ desk, owner } = settled); }, { first: (page, settled) => holdFor(page, "0", settled) });

const EMAIL = "sunniva@mail.example";
const ofPeople = () => desk.mails.find((m) => m.to.includes(EMAIL) && m.mail.headers.get("auto-submitted") === undefined);

test("My client answers my letter line by line, with a paper and a photo that does not open, and I see what each answer is to", async ({ person }) => {
  const page = await person({ storageState: owner });
  const at = await takesIn(page, { name: "Sunniva Thorn", email: EMAIL, label: "100 % wool" }, desk);
  await page.getByRole("button", { name: "Approve and send" }).click();
  await expect.poll(() => ofPeople()?.mail.messageId).toBeTruthy();
  const text = ["Dear Mira,", "", "On Wed, 25 Nov 2026 at 9:00, Lantern Yard wrote:", "> Is it still wet?", "No, since Monday.", "> Did anybody treat it?", "My husband, with soap.", "", "Sunniva"].join("\r\n");
  const files = [
    { name: "valuation.pdf", type: "application/pdf", bytes: Buffer.from("%PDF-1.7\n".padEnd(5_000, "v")) },
    { name: "IMG_0012.HEIC", type: "image/heic", bytes: Buffer.alloc(4_000, "half a photo") },
  ];
  const buffer = letter({ from: `Sunniva Thorn <${EMAIL}>`, subject: "Re: Your rug", text, answers: ofPeople()?.mail.messageId ?? "", files, date: new Date() });
  await page.goto(`${desk.url}/desk/post`);
  await page.getByLabel("Choose letters").setInputFiles({ name: "answer.eml", mimeType: "message/rfc822", buffer });
  await expect(page.getByRole("listitem").filter({ hasText: "answer.eml" })).toContainText("Enquiry");
  await page.goto(at);
  const since = page.getByRole("region", { name: "Since our last letter" });
  await expect(since.getByRole("blockquote")).toContainText(/Is it still wet\?\s*No, since Monday\.\s*They repeat: Did anybody treat it\?\s*My husband, with soap\./);
  const saved = page.waitForEvent("download");
  await since.getByRole("link", { name: "Save valuation.pdf" }).click();
  expect((await saved).suggestedFilename()).toBe("valuation.pdf");
  await expect(page.getByText("A photo came by mail and could not be opened:")).toBeVisible();
  await expect(page.getByText("No photo was sent.")).toHaveCount(0);
  await fitsAndIsAccessible(page);
  await page.screenshot({ path: test.info().outputPath("answered-1280.png"), fullPage: true });
  const phone = await person({ ...PHONE, storageState: owner });
  await phone.goto(at);
  await fitsAndIsAccessible(phone);
  await phone.screenshot({ path: test.info().outputPath("answered-390.png"), fullPage: true });
});
