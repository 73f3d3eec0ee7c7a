import { readFile } from "node:fs/promises";
import { buffer } from "node:stream/consumers";
import * as z from "zod/mini";
import { checkLetter, checkSentence, WORDS_AND_PHOTOS, type Known } from "../reply/promises/check";
import { unjudgedOf } from "../reply/promises/unjudged";
import { ownLines } from "../words/quoted-lines";
import type { Assessment } from "../triage/assessment";
import { CommandError, runCommand } from "./command";
import { readError } from "./read-error";

const USAGE = "Say which letter: npm run promises -- LETTER.txt [--assessment FILE] [--lines], or - for standard input.";

/** The fields of an assessment that the check reads. */
const assessmentSchema = z.looseObject({
  fibres: z.array(z.looseObject({ fibre: z.string(), probability: z.number(), words: z.string() })).check(z.minLength(1)),
  findings: z.array(z.looseObject({ strength: z.string() })),
  methods: z.array(z.looseObject({ method: z.string(), verdict: z.string() })),
  improvement: z.nullable(z.object({ low: z.number(), median: z.number(), high: z.number() })),
  lifeYears: z.nullable(z.object({ low: z.number(), median: z.number(), high: z.number() })),
});

/**
 * What a letter promises beyond what is known, as JSON. Without an assessment it is judged as if only words and photos
 * were known; `--lines` judges each line by itself. `tell` is given what was left out of the judgement, a sentence each time.
 * @throws CommandError in one line for anything the person can put right, and where nothing of the letter can be judged.
 */
export async function promises(args: readonly string[], stdin: NodeJS.ReadableStream, tell: (note: string) => void): Promise<string> {
  const { letter, assessment, lines } = optionsOf(args);
  const known: Known = assessment === null ? WORDS_AND_PHOTOS : { assessment: await readAssessment(assessment) };
  const words = letter === "-" ? textOf(await buffer(stdin), "What stands on standard input") : await read(letter);
  const { nothing, notes } = unjudgedOf(words);
  if (nothing) throw new CommandError(`Nothing of ${letter === "-" ? "what stands on standard input" : letter} could be judged: ${nothing}.`);
  for (const note of notes) tell(note);
  const found = lines ? ownLines(words).split("\n").filter((l) => l.trim() !== "").flatMap((line) => checkSentence(line.trim(), known)) : checkLetter(words, known);
  return JSON.stringify(found, null, 2);
}

function optionsOf(args: readonly string[]): { letter: string; assessment: string | null; lines: boolean } {
  const rest: string[] = [];
  let assessment: string | null = null, lines = false;
  for (let i = 0; i < args.length; i += 1) {
    const arg = args[i] as string;
    if (arg === "--lines") lines = true;
    else if (arg === "--assessment") {
      const file = args[(i += 1)];
      if (file === undefined) throw new CommandError(`--assessment needs a file. ${USAGE}`);
      assessment = file;
    } else if (arg.startsWith("--")) throw new CommandError(`There is no option ${arg}. ${USAGE}`);
    else rest.push(arg);
  }
  const [letter, ...more] = rest;
  if (letter === undefined || more.length > 0) throw new CommandError(USAGE);
  return { letter, assessment, lines };
}

async function read(name: string): Promise<string> {
  const bytes = await readFile(name).catch((error: unknown) => { throw new CommandError(`${name} cannot be read: ${readError(error)}.`); });
  return textOf(bytes, name);
}

/** Letters as text in UTF-8; anything else would be judged as gibberish and pass. */
function textOf(bytes: Uint8Array, name: string): string {
  const not = new CommandError(`${name} is no plain text in UTF-8. Save the letter as text first.`);
  if (bytes.includes(0)) throw not;
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    throw not;
  }
}

/** An assessment as `npm run triage` prints it. */
async function readAssessment(name: string): Promise<Assessment> {
  const words = await read(name);
  let value: unknown;
  try {
    value = JSON.parse(words);
  } catch {
    throw new CommandError(`${name} is not JSON.`);
  }
  const parsed = assessmentSchema.safeParse(value);
  if (!parsed.success) throw new CommandError(`${name} is not an assessment of one rug, as npm run triage prints it.`);
  return value as Assessment;
}

if (import.meta.filename === process.argv[1]) {
  await runCommand(async () => {
    console.log(await promises(process.argv.slice(2), process.stdin, console.error));
  }, USAGE);
}
