"use client";
import { useRef, useState, type FormEvent } from "react";
import type { ParagraphView } from "@/lib/enquiry/paragraph-views";
import { SelectField, TextArea, TextField, TickBox } from "@/lib/ui/field";
import type { FormAction } from "@/lib/ui/form-state";
import { PlainForm } from "@/lib/ui/plain-form";
import css from "../paragraphs.module.css";
import { ConditionEditor } from "./condition-editor";
import { Preview } from "./preview";
import { usePreview } from "./use-preview";

/** A reason is asked for because of the words: other words are held to it anew. */
const WORDS = { text: ["reason"], warm: ["reason"], brief: ["reason"] };

/** One paragraph to write, with what keeping it would do to past letters beside it. The server alone checks it. */
export function ParagraphForm({ view, title, action }: { view: ParagraphView; title: string; action: FormAction }) {
  const box = useRef<HTMLDivElement>(null);
  const { found, isTrying, say, tryLater } = usePreview(view, () => box.current?.closest("form") ?? null);
  return (
    <PlainForm action={action} values={view.values} title={title} settles={WORDS}>
      <div ref={box} className={css.desk} onInput={tryLater}>
        <div className={css.write}>
          <TextArea name="text" label="What it says" hint="What stands in braces is filled in for each letter." rows={6} />
          <Slots slots={view.slots} />
          <details className={css.more}>
            <summary>In another tone</summary>
            <TextArea name="warm" label="Warmer" hint="Left empty, the words above are used." rows={4} />
            <TextArea name="brief" label="Shorter" hint="Left empty, the words above are used." rows={3} />
          </details>
          {view.isNeeded
            ? <Fixed values={view.values} />
            : <ConditionEditor facts={view.facts} numbers={view.numbers} json={String(view.values["when"] ?? "{}")} changed={tryLater} />}
          <Standing view={view} />
          {found && found.over.length > 0 && <TextField name="reason" label="To keep it as it is, say why" hint="Kept with this version." autoComplete="off" />}
          <div className={css.bar}><button className="button">Keep this paragraph</button></div>
        </div>
        <Preview found={found} say={say} isTrying={isTrying} />
      </div>
    </PlainForm>
  );
}

/** A paragraph that every letter needs, or that keeps people from harm: its words may change, its condition not. */
function Fixed({ values }: { values: ParagraphView["values"] }) {
  return (
    <>
      <input type="hidden" name="when" value={String(values["when"])} />
      <p className="small">When it is used cannot be changed, and it cannot be switched off: a letter needs it, or it keeps somebody from harm.</p>
    </>
  );
}

function Slots({ slots }: { slots: ParagraphView["slots"] }) {
  return (
    <details className={css.more}>
      <summary>What can be filled in</summary>
      <dl className={css.slots}>{slots.map(({ name, says }) => <div key={name}><dt>{`{${name}}`}</dt><dd>{says}</dd></div>)}</dl>
    </details>
  );
}

const NOTHING = { id: "", label: "Nothing in particular" };
/** Where it stands, when its turn comes, what it speaks of, and whether it is used at all. */
function Standing({ view }: { view: ParagraphView }) {
  const [placeId, setPlace] = useState(String(view.values["place"]));
  const place = view.places.find((p) => p.id === placeId);
  const isOwn = view.id === null || view.id.startsWith("own-");
  const changed = (event: FormEvent<HTMLDivElement>) => {
    const { name, value } = event.target as HTMLSelectElement;
    if (name === "place") setPlace(value);
  };
  return (
    <div className={css.standing} onChange={changed}>
      {isOwn
        ? <SelectField name="place" label="Where it stands" options={view.places.map(({ id, name }) => ({ id, label: name }))} />
        : <input type="hidden" name="place" value={placeId} />}
      <SelectField key={placeId} name="after" label="When its turn comes" options={[{ id: "first", label: "First in its place" }, ...(place?.paragraphs ?? []).map((p) => ({ id: p.id, label: `After “${p.begins}”` }))]} />
      {isOwn
        ? <SelectField name="about" label="What {chance} speaks of" options={[NOTHING, ...view.mechanisms.map(({ id, says }) => ({ id, label: says }))]} />
        : <input type="hidden" name="about" value={String(view.values["about"] ?? "")} />}
      {!view.isNeeded && <TickBox name="off" label="Switched off: kept, but used in no letter" />}
    </div>
  );
}
