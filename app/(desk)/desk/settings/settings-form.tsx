"use client";
import { CURRENCIES } from "@/lib/trade/questions";
import { inMonths, monthsOfPlace } from "@/lib/enquiry/may-erase";
import type { FormValues } from "@/lib/enquiry/step-schemas";
import { CheckedForm } from "@/lib/ui/checked-form";
import { SelectField, TextArea, TextField, TickBox } from "@/lib/ui/field";
import { useFields } from "@/lib/ui/form-context";
import { OFFERED_LOCALES } from "@/lib/words/locales";
import type { AreaUnit } from "@/lib/words/measures";
import { PRICE_FIELDS, type PriceId } from "@/lib/workshop/price-fields";
import { SETTING_NAMES } from "@/lib/workshop/settings-schema";
import css from "../page.module.css";
import { keepSettings } from "./actions";
import { settingsFormSchema } from "./schema";

const JURISDICTIONS = [
  { id: "EU", label: "European Union" }, { id: "IE", label: "Ireland" }, { id: "UK", label: "United Kingdom" }, { id: "US", label: "United States" }, { id: "other", label: "Somewhere else" },
];
const UNITS = [{ id: "m2", label: "Centimetres and m²" }, { id: "sqft", label: "Feet, inches and square feet" }];
const LOCALE_NAMES: Record<(typeof OFFERED_LOCALES)[number], string> = {
  "en-GB": "English, as in Britain", "en-IE": "English, as in Ireland", "en-US": "English, as in the United States",
  "en-CA": "English, as in Canada", "en-AU": "English, as in Australia", "en-NZ": "English, as in New Zealand",
};

export function SettingsForm({ title, values, usualEmergency, unit, rates }: { title: string; values: FormValues; /** The number of the place that is set, with its source. */ usualEmergency: string; /** In which areas are told, and prices typed. */ unit: AreaUnit; /** The prices as they are kept, in that unit. */ rates: Readonly<Partial<Record<PriceId, string>>> }) {
  return (
    <CheckedForm schema={settingsFormSchema} action={keepSettings} values={values} title={title}>
      <fieldset className={css.group}>
        <legend>The workshop</legend>
        <TextField name="name" label={SETTING_NAMES.name} />
        <div className={css.pair}><TextField name="town" label={SETTING_NAMES.town} /><TextField name="address" label={SETTING_NAMES.address} /></div>
        <div className={css.pair}><TextField name="email" type="email" label="E-mail address" hint="Letters go out in this name and answers come back to it." /><TextField name="telephone" type="tel" label={SETTING_NAMES.telephone} /></div>
        <div className={css.pair}><TextField name="hours" label={SETTING_NAMES.hours} hint="As you would say them, such as “Monday to Friday, 9 to 17”." /><TextField name="emergencyNumber" label={SETTING_NAMES.emergencyNumber} hint={`Told where somebody is hurt. Usual where you are: ${usualEmergency}.`} /></div>
      </fieldset>
      <fieldset className={css.group}>
        <legend>Letters</legend>
        <TextArea name="signature" label={SETTING_NAMES.signature} hint="Stands under every letter." rows={4} />
        <div className={css.pair}><TextField name="holdMinutes" label={SETTING_NAMES.holdMinutes} hint="So long it can be taken back." inputMode="numeric" /><TextField name="retentionMonths" label={SETTING_NAMES.retentionMonths} inputMode="numeric" /></div>
        <MayErase />
      </fieldset>
      <fieldset className={css.group}>
        <legend>What clients often ask</legend>
        <TextArea name="collecting" rows={2} label={SETTING_NAMES.collecting} hint="As clients read it, in whole sentences, such as “We collect within 15 miles; from further away you bring it, or a carrier does.” Say also if you do not collect. Stands in letters where they ask, or where the rug is to be brought. May stay empty." />
        <div className={css.pair}>
          <TextField name="weeksLow" label={SETTING_NAMES.weeksLow} hint="Whole weeks, from the day a rug reaches you." inputMode="numeric" />
          <TextField name="weeksHigh" label={SETTING_NAMES.weeksHigh} hint="Told to those who ask, as usual and not as promised. Both may stay empty." inputMode="numeric" />
        </div>
      </fieldset>
      <fieldset className={css.group}>
        <legend>Prices</legend>
        <div className={css.pair}>
          <SelectField name="currency" label="Currency" hint="Prices that you leave as they stand are exchanged. What was judged before keeps its currency until it is judged anew." options={CURRENCIES.map((c) => ({ id: c, label: c }))} />
        </div>
        <div className={css.pair}>
          {PRICE_FIELDS[unit].map(({ of, field }) => <TextField key={field} name={field} label={SETTING_NAMES[field]} hint={rates[of] && `Kept now: ${rates[of]}.`} inputMode="decimal" isFresh />)}
        </div>
      </fieldset>
      <fieldset className={css.group}>
        <legend>Where you are</legend>
        <SelectField name="jurisdiction" label="Whose general rules the law texts describe" hint="In general terms only: local law decides." options={JURISDICTIONS} />
        <div className={css.pair}>
          <SelectField name="locale" label="Language of clients" hint="And how dates and amounts are written. The words are spelled as in Britain." options={OFFERED_LOCALES.map((id) => ({ id, label: LOCALE_NAMES[id] }))} />
          <SelectField name="areaUnit" label="Sizes and areas" hint="In pages and letters, and for prices here. Clients may give either." options={UNITS} />
        </div>
        <TextField name="timeZone" label="Time zone" hint="Such as Europe/Dublin." />
      </fieldset>
      <div className={css.send}><button className="button">Keep the settings</button></div>
    </CheckedForm>
  );
}

/** Shown once a shorter time would erase something; somebody has to agree to it. */
function MayErase() {
  const { errors, initial } = useFields();
  const place = [...Object.keys(errors), ...Object.keys(initial)].find((name) => monthsOfPlace(name) !== null);
  return place !== undefined && <TickBox key={place} name={place} label={`What has rested for ${inMonths(monthsOfPlace(place) ?? 0)} or longer may be erased`} />;
}
