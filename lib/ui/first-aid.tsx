import { FIRST_AID } from "../trade/first-aid";
import styles from "./first-aid.module.css";

/** The one set of first aid, whatever the rug is made of. People come before the rug, so the dangers stand first. */
export function FirstAid({ emergencyNumber }: { emergencyNumber: string }) {
  return (
    <div className={styles.aid}>
      <section className={styles.dangers} aria-labelledby="keep-off">
        <h2 id="keep-off">People first</h2>
        <p>{FIRST_AID.emergency(emergencyNumber)}</p>
        <ul>{FIRST_AID.dangers.map((d) => <li key={d}>{d}</li>)}</ul>
      </section>
      <section aria-labelledby="then-the-rug">
        <h2 id="then-the-rug">Then the rug</h2>
        <ol>{FIRST_AID.steps.map((s) => <li key={s}>{s}</li>)}</ol>
      </section>
    </div>
  );
}
