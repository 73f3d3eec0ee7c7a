import { randomUUID } from "node:crypto";
import { Readable } from "node:stream";
import { describe, expect, it } from "vitest";
import { keepPost } from "../../../lib/enquiry/keep-post";
import { enclosedFile } from "../../../lib/enquiry/post-file";
import { readEnquiry } from "../../../lib/enquiry/read-enquiry";
import { readPostItem } from "../../../lib/enquiry/read-post";
import { sortPost } from "../../../lib/enquiry/sort-post";
import { withoutEnclosure } from "../../../lib/mail/incoming/without-enclosure";
import { database } from "../../../lib/store/database";
import { readPostFile, replacePostFile } from "../../../lib/store/post-files";
import { letter, photos, type ToEnclose } from "./mail-files";
import { clientOf, CURIOUS, good, NOW, staff, submitted, SYSTEM } from "./workshop";

const pia = () => staff("trainee", "Pia");
const PDF = { name: "valuation.pdf", type: "application/pdf", bytes: Buffer.from("%PDF-1.7\n".padEnd(5_000, "v")) };
const DOCX = { name: "history.docx", type: "application/vnd.openxmlformats-officedocument.wordprocessingml.document", bytes: Buffer.from("PK\u0003\u0004".padEnd(2_100_000, "d")) };
const TXT = { name: "notes.txt", type: "text/plain", bytes: Buffer.from("Bought in 1987.") };

/** A letter with a photo that became an enquiry, with the files beside it. */
async function cameWith(...files: ToEnclose[]) {
  const [photo = Buffer.alloc(0)] = await photos("#7d2e38");
  const { postId } = good(await keepPost(SYSTEM, Readable.from([letter({ from: `${randomUUID()}@example.org`, photos: [photo], files })]), NOW));
  await sortPost(postId, NOW);
  const { enquiryId } = await database().post.findUniqueOrThrow({ where: { id: postId } });
  return { postId, enquiryId: enquiryId ?? "", photo };
}
const saved = async (postId: string, at: number) => good(await enclosedFile(await pia(), { postId, at }));

/** Files that come with a letter and are no photos. */
export function enclosedFiles(): void {
  describe("a letter's enclosures that are no photos", () => {
    it("are named at the enquiry and in the Post with their size, and each is saved alone with the bytes that came", async () => {
      const { postId, enquiryId } = await cameWith(PDF, DOCX, TXT);
      const files = [{ at: 0, name: "valuation.pdf", kilobytes: 5 }, { at: 1, name: "history.docx", kilobytes: 2051 }, { at: 2, name: "notes.txt", kilobytes: 1 }];
      expect(good(await readEnquiry(await pia(), enquiryId, NOW)).post).toMatchObject([{ files, leftOut: [] }]);
      expect(good(await readPostItem(await pia(), postId)).post).toMatchObject({ files, leftOut: [] });
      for (const [at, file] of [PDF, DOCX, TXT].entries()) {
        const { bytes, fileName } = await saved(postId, at);
        expect(fileName).toBe(file.name);
        expect(bytes.equals(file.bytes), file.name).toBe(true);
      }
    });
    it("are saved by staff alone, and there are no more than came", async () => {
      const { postId } = await cameWith(TXT);
      for (const at of [1, -1, 0.5, Number.NaN]) expect(await enclosedFile(await pia(), { postId, at }), String(at)).toMatchObject({ ok: false, code: "not-found" });
      expect(await enclosedFile(await pia(), { postId: randomUUID(), at: 0 })).toMatchObject({ ok: false, code: "not-found" });
      expect(await enclosedFile(await clientOf(await submitted(CURIOUS)), { postId, at: 0 })).toMatchObject({ ok: false, code: "not-signed-in" });
      expect(await enclosedFile({ kind: "public", addressHash: null }, { postId, at: 0 })).toMatchObject({ ok: false, code: "not-signed-in" });
    });
    it.each([
      ["ends a line", "filename*=UTF-8''bill%0D%0ASet-Cookie%3A%20a%3Db.pdf", "bill Set-Cookie a=b.pdf"],
      ["holds quotes", String.raw`filename="my \"good\" rug.pdf"`, "my good rug.pdf"],
      ["climbs out of its folder", 'filename="../../etc/passwd.txt"', "etc passwd.txt"],
      ["hides itself", 'filename=".bashrc"', "bashrc"],
      ["turns its ending round", "filename*=UTF-8''rug%E2%80%AEfdp.exe", "rug fdp.exe"],
      ["is missing", "size=15", "text plain"],
      ["is longer than a disk takes", `filename="${"a".repeat(300)}.docx"`, `${"a".repeat(75)}.docx`],
      ["is cut within an emoji", `filename*=UTF-8''${"%F0%9F%A7%B6".repeat(90)}.pdf`, `${"🧶".repeat(76)}.pdf`],
    ])("has a name that is safe to save under where the sender's %s", async (_, named, safe) => {
      const { postId } = await cameWith({ ...TXT, named });
      expect((await saved(postId, 0)).fileName).toBe(safe);
    });
    it("keep their places where a photo of the letter was blurred and cut out of it", async () => {
      const { postId, photo } = await cameWith(PDF, TXT);
      const { sha256 } = await database().photo.findFirstOrThrow({ where: { rug: { enquiry: { post: { some: { id: postId } } } } } });
      const cut = withoutEnclosure(await readPostFile(postId), sha256);
      expect(cut?.includes(photo.toString("base64").slice(0, 60))).toBe(false);
      await replacePostFile(postId, cut ?? Buffer.alloc(0));
      expect((await saved(postId, 1)).bytes.equals(TXT.bytes)).toBe(true);
    });
  });
}
