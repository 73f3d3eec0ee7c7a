import { createInterface } from "node:readline";
import { config } from "../../lib/config/config";
import { deliverDue } from "../../lib/mail/outbox";
import { queueLetter } from "../../lib/mail/outbox";
import { closeDatabase, transact } from "../../lib/store/database";
import { composeLetter } from "../../lib/mail/compose";

// The process that the parent kills: writes letters one by one into the outbox and delivers each. It says where it
// stands and goes on at the parent's word, so that a kill falls on the very point it is meant for.
const { enquiryId, address, first, last, now } = JSON.parse(process.argv[2] ?? "") as { enquiryId: string; address: string; first: number; last: number; now: string };
const words = createInterface({ input: process.stdin })[Symbol.asyncIterator]();
const stand = async (where: string) => {
  process.stdout.write(`${where}\n`);
  await words.next();
};
const workshop = { name: "Lantern Yard Rug Workshop", town: "Hallowmere", address: "", email: "desk@lantern-yard.example", telephone: "" };

config.smtp = { url: process.env["TEST_SMTP_URL"] ?? "", from: { name: workshop.name, address: workshop.email } };
for (let n = first; n <= last; n++) {
  await transact(async (tx) => {
    await queueLetter(tx, { enquiryId, to: { name: "Ana Example", address }, workshop, now: new Date(now), letter: composeLetter({ kind: "reply", subject: `Letter ${n}`, text: "Dear Ana Example", workshop }) });
    await stand(`written ${n}`);
  });
  await stand(`committed ${n}`);
  await deliverDue(new Date(now));
}
await closeDatabase();
process.exit(0);
