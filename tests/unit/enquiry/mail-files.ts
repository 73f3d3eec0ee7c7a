import sharp from "sharp";

/** Messages as mail programs write them, made by hand from RFC 5322, 2045 and 3464 and by no code of ours. */
const crlf = (lines: readonly string[]): Buffer => Buffer.from(lines.join("\r\n"));
const DESK = "desk@lantern-yard.example";
let count = 0;

/** A file to enclose. `named`: its Content-Disposition after the semicolon, where its name is written otherwise than plainly. */
export interface ToEnclose { name: string; type: string; bytes: Buffer; named?: string }
export interface Written { files?: ToEnclose[]; from?: string; subject?: string; text?: string; answers?: string; id?: string; photos?: Buffer[]; head?: string[]; date?: Date }

/** A letter with its photos and files as enclosures; each has a Message-ID of its own unless one is given. */
export function letter({ from = "Ana Example <ana@example.org>", subject = "My rug", text = "It turned brown.", answers, id = `<m${++count}.${Date.now()}@example.org>`, photos = [], files = [], head = [], date = new Date("2026-11-25T08:50:00Z") }: Written = {}): Buffer {
  const top = [`From: ${from}`, `To: ${DESK}`, `Subject: ${subject}`, `Message-ID: ${id}`, `Date: ${date.toUTCString().replace("GMT", "+0000")}`, ...(answers ? [`In-Reply-To: ${answers}`, `References: ${answers}`] : []), ...head, "MIME-Version: 1.0"];
  const pictures = photos.map((bytes, n) => ({ name: `photo-${n + 1}.jpg`, type: "image/jpeg", bytes }));
  const enclosed: ToEnclose[] = [...pictures, ...files];
  if (enclosed.length === 0) return crlf([...top, "Content-Type: text/plain; charset=utf-8", "", text, ""]);
  const parts = enclosed.flatMap(({ name, type, bytes, named }) => [
    "--part", `Content-Type: ${type}${named ? "" : `; name="${name}"`}`, "Content-Transfer-Encoding: base64", `Content-Disposition: attachment; ${named ?? `filename="${name}"`}`, "",
    bytes.toString("base64").replace(/.{76}/gu, "$&\r\n"), "",
  ]);
  return crlf([...top, 'Content-Type: multipart/mixed; boundary="part"', "", "--part", "Content-Type: text/plain; charset=utf-8", "", text, "", ...parts, "--part--", ""]);
}

/** A report of RFC 3464 that a letter of ours was not delivered. */
export const report = ({ about, to, action = "failed", status = "5.1.1", says = "550 5.1.1 no such mailbox" }: { about: string; to: string; action?: string; status?: string; says?: string }): Buffer => crlf([
  "From: Mail Delivery <MAILER-DAEMON@mx.example.org>", `To: ${DESK}`, "Subject: Undelivered mail returned to sender", `Message-ID: <r${++count}.${Date.now()}@mx.example.org>`, "Auto-Submitted: auto-replied",
  "MIME-Version: 1.0", 'Content-Type: multipart/report; report-type=delivery-status; boundary="r"', "", "--r", "Content-Type: text/plain", "", "Your message could not be delivered.", "",
  "--r", "Content-Type: message/delivery-status", "", "Reporting-MTA: dns; mx.example.org", "", `Final-Recipient: rfc822; ${to}`, `Action: ${action}`, `Status: ${status}`, `Diagnostic-Code: smtp; ${says}`, "",
  "--r", "Content-Type: text/rfc822-headers", "", `From: ${DESK}`, `To: ${to}`, `Message-ID: ${about}`, "Subject: Your rug", "", "--r--", "",
]);

/** Small photos of different colours, as a phone's JPEG. */
export const photos = (...colours: string[]): Promise<Buffer[]> =>
  Promise.all(colours.map((background) => sharp({ create: { width: 80, height: 60, channels: 3, background } }).jpeg().toBuffer()));
