"use client";
import { TONES } from "@/lib/trade/tones";
import { SelectField } from "@/lib/ui/field";
import { PlainForm } from "@/lib/ui/plain-form";
import { keepTone } from "./actions";
import css from "./paragraphs.module.css";

const OPTIONS = Object.entries(TONES).map(([id, label]) => ({ id, label }));

/** How letters sound, where a paragraph has a variant. */
export function ToneForm({ tone }: { tone: string }) {
  return (
    <PlainForm action={keepTone} values={{ tone }} title="Paragraphs of the letters">
      <div className={css.tone}>
        <SelectField name="tone" label="How letters sound" hint="Where a paragraph has a variant of that tone." options={OPTIONS} />
        <button className="button quiet">Keep</button>
      </div>
    </PlainForm>
  );
}
