import { fibreName } from "../trade/fibres";
import type { ComponentBelief } from "../triage/assessment";
import { wordsForChance } from "../triage/words";
import { chancePercent, sentenceCase } from "./figures";
import { Length, spoken } from "./length";
import { Measure, Measures } from "./measure-row";
import css from "./judgement.module.css";

const PARTS: Readonly<Record<ComponentBelief["part"], string>> = { pile: "the pile", ground: "the ground", fringe: "the fringe" };
const YARNS: Readonly<Record<ComponentBelief["yarn"], string>> = { whole: "", field: "field of ", accent: "accent of " };

/** Shown are those from this chance on, the most probable in any case. Elicited. */
const WORTH_SHOWING = 0.1;

/** What single yarns and parts are made of, where something speaks for them: a few lengths and a sentence each. */
export function Components({ components, as: H }: { components: readonly ComponentBelief[]; as: "h3" | "h4" }) {
  return components.map((c) => {
    const name = sentenceCase(`${YARNS[c.yarn]}${PARTS[c.part]}`);
    return (
      <div key={`${c.part}:${c.yarn}`}>
        <H className={css.group}>{name}</H>
        <Measures>{c.fibres.filter((f, k) => k === 0 || f.probability >= WORTH_SHOWING).map((f) => <Fibre key={f.fibre} belief={f} />)}</Measures>
        <p className={css.plain}>{c.says}</p>
      </div>
    );
  });
}

function Fibre({ belief: { fibre, probability } }: { belief: ComponentBelief["fibres"][number] }) {
  const [name, words] = [sentenceCase(fibreName(fibre)), wordsForChance({ probability, low: probability })];
  return <Measure name={name} note={words} chart={<Length share={probability} says={spoken(name, words, chancePercent(probability))} />} figures={chancePercent(probability)} />;
}
