import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { config } from "../../lib/config/config";
import { closeDatabase } from "../../lib/store/database";
import { DATABASES, type Scratch } from "../scratch";
import { migrated } from "../store/databases";
import { OUR_ADDRESS } from "../unit/mail/make";
import { killedLetters, POINTS } from "./killed-letters";
import { startMailServer, type MailServer } from "./mail-server";
import { startRawMailServer } from "./raw-mail-server";

// A bounded form; `npm run long` sends two hundred letters for each point.
const KILLED_AT = [4, 8];
const SERVERS = [
  { name: "a real server", start: startMailServer, isFaulty: false, letters: 10 },
  { name: "a raw, faulty one", start: startRawMailServer, isFaulty: true, letters: 18 },
];

describe.each(DATABASES)("kill -9 while letters are sent, on $name", (kind) => {
  let scratch: Scratch;
  let server: MailServer;

  beforeAll(async () => {
    scratch = await migrated(kind);
    config.databaseUrl = scratch.url;
    await closeDatabase();
  });
  afterAll(async () => {
    await closeDatabase();
    await scratch.drop();
  });
  afterEach(async () => {
    config.smtp = null;
    await server.close();
  });

  // The faults of a server have nothing to do with the database: the second one is spared them.
  describe.each(kind === DATABASES[0] ? SERVERS : SERVERS.slice(0, 1))("to $name", ({ start, isFaulty, letters }) => {
    it.each(POINTS)("loses and doubles nothing beyond the kills and what the server left open: %s", async (point) => {
      server = await start();
      config.smtp = { url: server.url, from: OUR_ADDRESS };
      const proof = await killedLetters({ point, letters, killedAt: KILLED_AT, server, databaseUrl: scratch.url, isFaulty });
      expect(proof.wrong).toEqual([]);
      expect(proof.rows).toBe(point === POINTS[0] ? letters - KILLED_AT.length : letters);
      // Of a kill after the dot the server holds a copy, and another is sent: nobody can know.
      if (point === POINTS[3] && !isFaulty) expect(proof.extra).toBe(KILLED_AT.length);
      if (isFaulty) expect(proof.refused).toBe(1);
    }, 240_000);
  });
});
