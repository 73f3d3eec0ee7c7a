import { text } from "node:stream/consumers";
import { readLabel, type LabelReading } from "../triage/read-label";
import { CommandError, runCommand } from "./command";

export const USAGE = `npm run label -- "80% WOOL 20% VISCOSE" reads one label, and each further text another; without a text, each line of standard input is a label.
Each answer is one line of JSON: components (part: pile, ground, fringe, whole; fibres: fibre, percent or null), doubts, suggests, rules.
Fibres: silk, wool, hair, cotton, mercerised-cotton, linen, hemp, ramie, jute, sisal, coir, abaca, viscose, modal, lyocell, cupro, acetate,
triacetate, bamboo, art-silk, polyamide, polyester, polypropylene, acrylic, modacrylic, elastane, metal, rare, synthetic, other-fibres.`;

/** The name of a picture, which nobody means as a label's words. */
const PICTURE = /\.(?:jpe?g|png|heic|heif|webp|avif)$/iu;

/** One reading as a line of JSON, keys in a fixed order. */
const line = ({ components, doubts, suggests, rules }: LabelReading) => JSON.stringify({ components, doubts, suggests, rules });

/**
 * The wording of labels, one an argument or one a line; empty lines give an empty reading, so that answers stay beside their lines.
 * @throws CommandError for an unknown option, for a picture, or where a person at a terminal gives no text.
 */
export async function label(args: readonly string[], stdin: NodeJS.ReadableStream & { isTTY?: boolean }): Promise<string> {
  const unknown = args.find((a) => a.startsWith("--"));
  if (unknown) throw new CommandError(`There is no option ${unknown}. ${USAGE}`);
  const picture = args.find((a) => PICTURE.test(a.trim()));
  if (picture) throw new CommandError(`This reads the words of a label, not a picture. To read the label in one: npm run photo -- ${/\s/u.test(picture) ? `"${picture}"` : picture} --label`);
  if (args.length > 0 && !(args.length === 1 && args[0] === "-")) return args.map((words) => line(readLabel(words))).join("\n");
  if (args.length === 0 && stdin.isTTY) throw new CommandError(USAGE);
  const lines = (await text(stdin)).replace(/\r?\n$/u, "").split(/\r?\n/u);
  return lines.map((words) => line(readLabel(words))).join("\n");
}

if (import.meta.filename === process.argv[1]) {
  await runCommand(async () => {
    console.log(await label(process.argv.slice(2), process.stdin));
  }, USAGE);
}
