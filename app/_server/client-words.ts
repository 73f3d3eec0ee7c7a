import "server-only";
import { wordsIn, type Words } from "@/lib/words/words";
import { DEFAULT_SETTINGS } from "@/lib/workshop/settings-schema";
import { readSettings } from "@/lib/workshop/settings";

/** The words clients read, by the workshop's settings. Without a database the page still says, in our own, what went wrong. */
export const clientWords = async (): Promise<Words> => wordsIn((await readSettings().catch(() => DEFAULT_SETTINGS)).locale);
