import { config } from "../../lib/config/config";
import { closeDatabase } from "../../lib/store/database";
import { killedLetters, POINTS, type Point, type Proof } from "../faults/killed-letters";
import { startMailServer } from "../faults/mail-server";
import { startRawMailServer } from "../faults/raw-mail-server";
import { sqlite } from "../scratch";
import { migrated } from "../store/databases";
import { OUR_ADDRESS } from "../unit/mail/make";
import type { LongCheck, Outcome } from "./check";

/** trust.md: kill -9 at five points, two hundred letters each. */
const LETTERS = 200;
/** One in ten; never two in a row, so that each kill has a letter of its own. */
const KILLED_AT = Array.from({ length: LETTERS / 10 }, (_, i) => 10 * i + 5);
const SERVERS = [
  { name: "a real server", start: startMailServer, isFaulty: false },
  { name: "a raw, faulty server", start: startRawMailServer, isFaulty: true },
];

async function proofOf({ start, isFaulty }: (typeof SERVERS)[number], point: Point, progress: (share: number) => void): Promise<Proof> {
  const scratch = await migrated(sqlite);
  const server = await start();
  config.databaseUrl = scratch.url;
  config.smtp = { url: server.url, from: OUR_ADDRESS };
  try {
    return await killedLetters({ point, letters: LETTERS, killedAt: KILLED_AT, server, databaseUrl: scratch.url, isFaulty, progress });
  } finally {
    config.smtp = null;
    await server.close();
    await closeDatabase();
    await scratch.drop();
  }
}

const saying = (point: Point, p: Proof): Outcome => ({
  name: `Killed ${point}`, holds: p.wrong.length === 0,
  measured: p.wrong[0] ?? `${p.sent} sent, ${p.refused} refused, ${p.copies} copies (${p.extra} extra)`,
  required: `nothing lost; extra copies at most ${p.kills + p.doubts}`,
});

export const checks: LongCheck[] = SERVERS.map((server) => ({
  name: `Mail: kill -9 at five points, ${LETTERS} letters each, ${KILLED_AT.length} kills, to ${server.name}`,
  async run(progress) {
    const outcomes: Outcome[] = [];
    for (const [i, point] of POINTS.entries()) {
      const proof = await proofOf(server, point, (share) => progress((i + share) / POINTS.length));
      outcomes.push(saying(point, proof));
    }
    return outcomes;
  },
}));
