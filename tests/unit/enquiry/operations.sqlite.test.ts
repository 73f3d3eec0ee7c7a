import { beforeAll, vi } from "vitest";
import { mkdirSync } from "node:fs";
import { migrateDatabase } from "../../../lib/store/database";
import { photoFolder } from "../../../lib/store/photo-files";
import { answering } from "./answering";
import { atTheDesk } from "./at-the-desk";
import { correcting } from "./correcting";
import { onPaper } from "./on-paper";
import { onTheBench } from "./on-the-bench";
import { onTheWire } from "./on-the-wire";
import { ownParagraphs } from "./own-paragraphs";
import { submitting } from "./submitting";
import { settle } from "./workshop";

beforeAll(async () => {
  vi.spyOn(console, "warn").mockReturnValue(undefined);
  await migrateDatabase();
  mkdirSync(photoFolder(), { recursive: true });
  await settle();
});
submitting();
answering();
atTheDesk();
onTheBench();
correcting();
onPaper();
onTheWire();
ownParagraphs();
