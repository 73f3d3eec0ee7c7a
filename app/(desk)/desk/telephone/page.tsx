import { staffCallerOrRedirect } from "@/app/_server/caller";
import { FirstAid } from "@/lib/ui/first-aid";
import { deskWords } from "@/lib/words/words";
import { readSettings } from "@/lib/workshop/settings";
import { TelephoneForm } from "./telephone-form";
import css from "./telephone.module.css";

const TITLE = "By telephone";
// The title stands in the form, because it begins with "Error:" after a failed attempt.
export const metadata = { title: null };

export default async function Page() {
  await staffCallerOrRedirect();
  const { areaUnit, currency, emergencyNumber, locale } = await readSettings();
  return (
    <>
      <h1>{TITLE}</h1>
      <div className={css.two}>
        <TelephoneForm title={TITLE} currency={currency} areaUnit={areaUnit} aid={(
          <aside className={css.aid} aria-label="First aid, to read out">
            <div className={css.read} tabIndex={0} role="group" aria-labelledby="to-read-out">
              <p className="small" id="to-read-out">To read out where anything is wet:</p>
              <FirstAid words={deskWords(locale)} emergencyNumber={emergencyNumber} />
            </div>
          </aside>
        )} />
      </div>
    </>
  );
}
