import { createInterface } from "node:readline";
import { config } from "../../lib/config/config";
import { composeLetter } from "../../lib/mail/compose";
import { deliverDue, queueLetter } from "../../lib/mail/outbox";
import { closeDatabase, transact } from "../../lib/store/database";
import { enclosedWith, nameOf, type KillJob } from "./killed-letters";

// The process that the parent kills: writes letters one by one into the outbox and delivers each. It says where it
// stands and goes on at the parent's word, so that a kill falls on the very point it is meant for.
const { enquiryId, address, documentId, first, last, now, silenceMs } = JSON.parse(process.argv[2] ?? "") as KillJob;
const words = createInterface({ input: process.stdin })[Symbol.asyncIterator]();
const stand = async (where: string) => {
  process.stdout.write(`${where}\n`);
  await words.next();
};
const workshop = { name: "Lantern Yard Rug Workshop", town: "Hallowmere", address: "", email: "desk@lantern-yard.example", telephone: "" };

config.smtp = { url: process.env["TEST_SMTP_URL"] ?? "", from: { name: workshop.name, address: workshop.email } };
for (let n = first; n <= last; n++) {
  await transact(async (tx) => {
    const letter = composeLetter({ kind: "reply", subject: `Letter ${n}`, text: "Dear Ana Example", workshop });
    await queueLetter(tx, { enquiryId, to: { name: nameOf(n), address }, workshop, now: new Date(now), letter, documentIds: enclosedWith(n, documentId) });
    await stand(`written ${n}`);
  });
  await stand(`committed ${n}`);
  await deliverDue(new Date(now), { times: { connectMs: silenceMs, silenceMs } });
}
await closeDatabase();
process.exit(0);
