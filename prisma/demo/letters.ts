import { Readable } from "node:stream";
import MailComposer from "nodemailer/lib/mail-composer";
import { bringPost } from "../../lib/enquiry/bring-post";
import type { Caller } from "../../lib/enquiry/caller";
import { drawRug } from "./draw-rug";
import type { DemoPhoto } from "./types";
import { DEMO_WORKSHOP } from "./workshop";

interface DemoLetter {
  minutesAgo: number;
  from: { name: string; address: string };
  subject: string;
  text: string;
  photos?: DemoPhoto[];
  headers?: Record<string, string>;
}

/** Invented letters as mail programs send them: one becomes an enquiry, two wait for a person, one a machine wrote. */
const LETTERS: readonly DemoLetter[] = [
  {
    minutesAgo: 205,
    from: { name: "Rosalind Quayle", address: "rosalind@quayle.example" },
    subject: "Flat-woven rug, a plant pot leaked",
    text: "Good morning,\n\nI moved a plant pot and found a pale ring on the rug underneath. It has been dry for a week or so. Is there anything to be done, or do we live with it?\n\nTwo photos are with this.\n\nRosalind Quayle",
    photos: [
      { kind: "whole", weave: "flatweave", colours: ["#4f6a64", "#d9cfb8", "#a8683f", "#2d3b44"], damage: { kind: "ring", x: 0.4, y: 0.55, r: 0.1 } },
      { kind: "trouble", weave: "flatweave", colours: ["#4f6a64", "#d9cfb8", "#a8683f", "#2d3b44"], damage: { kind: "ring", x: 0.4, y: 0.55, r: 0.1 } },
    ],
  },
  {
    minutesAgo: 150,
    from: { name: "Ambrose Thackley", address: "ambrose@thackley.example" },
    subject: "I found the receipt",
    text: "Hello,\n\nI have found the receipt after all. It says “flat-woven, cotton”, bought in March 2021, and nothing about how it may be washed.\n\nAmbrose Thackley",
  },
  {
    minutesAgo: 95,
    from: { name: "Delphine Orr", address: "delphine.orr@mail.example" },
    subject: "Do you collect?",
    text: "Hello,\n\nwe have a large rug with moth in one corner and no car. Do you collect from Nether Hallow, and what would that cost?\n\nThank you,\nDelphine Orr",
  },
  {
    minutesAgo: 60,
    from: { name: "Hallowmere Trade Fairs", address: "news@tradefairs.example" },
    subject: "Stands for the spring fair",
    text: "Early bookings for the spring fair are open. You receive this because you are on our list.",
    headers: { "List-Id": "<news.tradefairs.example>" },
  },
];

async function written({ from, subject, text, photos = [], headers = {} }: DemoLetter, date: Date, seed: number): Promise<Buffer> {
  const drawn = await Promise.all(photos.map((photo) => drawRug({ ...photo, seed })));
  const attachments = drawn.map((content, n) => ({ filename: `IMG_${2041 + n}.jpg`, content, contentType: "image/jpeg" }));
  return new MailComposer({ from, to: DEMO_WORKSHOP.email, subject, text, date, headers, attachments }).compile().build();
}

/** Brings the letters into the Post by the way of every letter. */
export async function bringLetters(by: Caller, now: Date): Promise<void> {
  for (const [n, letter] of LETTERS.entries()) {
    const at = new Date(now.getTime() - letter.minutesAgo * 60_000);
    const brought = await bringPost(by, Readable.from([await written(letter, at, 900 + n)]), at);
    if (!brought.ok) throw new Error(`The demo's letter “${letter.subject}” could not be brought: ${brought.say}`);
  }
}
