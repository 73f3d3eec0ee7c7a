import { FIRST_AID } from "../trade/first-aid";
import { emergencyIn, gasIn } from "../words/first-aid";
import type { Words } from "../words/words";
import styles from "./first-aid.module.css";

/** The one set of first aid, whatever the rug is made of. People come before the rug, so the dangers stand first. `handsOff`: nobody may touch it. `isGas`: nobody may bend over it either. */
export function FirstAid({ words, emergencyNumber, handsOff = false, isGas = false }: { words: Words; emergencyNumber: string; handsOff?: boolean; isGas?: boolean }) {
  return (
    <div className={styles.aid}>
      <section className={styles.dangers} aria-labelledby="keep-off">
        <h2 id="keep-off">{words.say("first-aid.people")}</h2>
        <p>{(isGas ? gasIn : emergencyIn)(words, emergencyNumber)}</p>
        <ul>{FIRST_AID.dangers.map((d, at) => <li key={d}>{words.table(`first-aid.danger.${at}`)}</li>)}</ul>
      </section>
      <section aria-labelledby="then-the-rug">
        <h2 id="then-the-rug">{words.say("first-aid.rug")}</h2>
        <ol>{handsOff || isGas
          ? FIRST_AID.handsOff.map((s, at) => <li key={s}>{words.table(`first-aid.hands-off.${at}`)}</li>)
          : FIRST_AID.steps.map((s, at) => <li key={s}>{words.table(`first-aid.step.${at}`)}</li>)}</ol>
      </section>
    </div>
  );
}
