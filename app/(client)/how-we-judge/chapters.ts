import { METHODS } from "@/lib/trade/care";
import { CAPS, SILK_CEILING } from "@/lib/trade/evidence-caps";
import { LOSSES } from "@/lib/trade/losses";
import type { PartId } from "@/lib/trade/table";
import { sayPercent } from "@/lib/ui/printed-table";
import { printedIn } from "@/lib/words/printed-tables";
import type { Words } from "@/lib/words/words";

/** A part of the method: its name, what it does in a paragraph or two, and whose tables it goes by. They stand on a page of its own, at its id. */
export interface Chapter { readonly id: string; readonly title: string; readonly how: readonly string[]; readonly parts: readonly PartId[] }

/** The chapters in the order of the reasoning, in a client's words. */
export function chaptersIn(words: Words): Chapter[] {
  const { say } = words;
  const print = printedIn(words);
  const share = (p: number) => sayPercent(p, words);
  const caps = { told: share(CAPS.told), typed: share(CAPS["label-typed"]), seen: share(CAPS["label-photo"]), silk: share(SILK_CEILING) };
  const costs = { failed: LOSSES["promised-and-failed"].loss, worse: LOSSES["made-worse"].loss, declined: LOSSES["declined-cleanable"].loss };
  return [
    { id: "fibre", title: say("judge.fibre"), how: [say("judge.fibre-begins"), say("judge.fibre-caps", caps)], parts: ["fibre", "words"] },
    { id: "labels", title: say("judge.labels"), how: [say("judge.labels-how")], parts: ["labels"] },
    { id: "tests", title: say("judge.tests"), how: [say("judge.tests-how")], parts: ["tests"] },
    { id: "happened", title: say("judge.happened"), how: [say("judge.happened-how")], parts: ["happened"] },
    { id: "cleaning", title: say("judge.cleaning"), how: [say("judge.cleaning-how", { most: print(METHODS["immersion-wash"].name), least: print(METHODS.none.name) })], parts: ["prospects"] },
    { id: "life", title: say("judge.life"), how: [say("judge.life-how")], parts: ["life"] },
    { id: "money", title: say("judge.money"), how: [say("judge.money-how")], parts: ["money"] },
    { id: "advice", title: say("judge.advice"), how: [say("judge.advice-how", costs)], parts: ["decision"] },
  ];
}
