"use client";
import { lazy, Suspense, useActionState, useEffect, useId, useRef, useState, useTransition, type FormEvent, type ReactNode } from "react";
import type { Frame, LabelReadingView } from "../enquiry/label-view";
import type { PhotoView } from "../enquiry/views";
import { FRESH_LABEL, type LabelDeeds, type LabelFormState } from "./label-form";
import css from "./label-reading.module.css";
import { isAsked, isToWrite, LABEL_SAYS, type LabelVoice } from "./label-words";
import { useLabelReading } from "./use-label-reading";

export type { LabelDeeds } from "./label-form";
const FrameMarker = lazy(() => import("./marking/frame-marker").then((m) => ({ default: m.FrameMarker })));

const LOST = "The connection was lost. What you wrote is still here; please try again.";

interface Props { photo: Pick<PhotoView, "id" | "width" | "height" | "label">; deeds: LabelDeeds; voice: LabelVoice; mayAnswer?: boolean; isFramed?: boolean }

/** What was read of a label, whether it is right, and where in the photo it lies. Works without script, but for the frame; while the label is being read the page looks again by itself. */
export function LabelReading({ photo, deeds, voice, mayAnswer = true, isFramed = false }: Props) {
  const [posted, post] = useActionState(deeds.answer, FRESH_LABEL);
  const { reading, trouble, take } = useLabelReading({ photoId: photo.id, kept: posted.reading ?? photo.label, look: deeds.look });
  const [answered, setAnswered] = useState<LabelFormState | null>(null);
  const [isBusy, start] = useTransition();
  const status = useRef<HTMLParagraphElement>(null);
  const said = answered ?? posted;
  // What says that it is kept shows only after the next drawing, and so can only then be focused.
  useEffect(() => { if (answered && answered.say === null) status.current?.focus(); }, [answered]);
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget, (event.nativeEvent as SubmitEvent).submitter);
    start(async () => {
      const result = await deeds.answer(said, form).catch((): LabelFormState => ({ ...said, attempt: said.attempt + 1, say: LOST }));
      if (result.reading && result.say === null) take(result.reading);
      setAnswered(result);
    });
  };
  const readThere = async (frame: Frame): Promise<string | null> => {
    const result = await deeds.frame({ photoId: photo.id, frame }).catch(() => null);
    if (!result?.ok) return result?.say ?? LOST;
    take(result.value);
    setAnswered(null);
    status.current?.focus();
    return null;
  };
  const say = said.say ?? trouble;
  return (
    <div className={isFramed ? `${css.reading} ${css.framed}` : css.reading}>
      <div className={css.said}>
        {reading && reading.lines.length > 0 && reading.state !== "refused" && <Words reading={reading} />}
        <p ref={status} role="status" tabIndex={-1} className={css.status}>{reading ? LABEL_SAYS[voice][reading.state] : trouble === null && LABEL_SAYS[voice].reading}</p>
        {(!reading || reading.state === "reading") && <noscript><p className={css.status}><a href="">Look again in a moment</a></p></noscript>}
        {say && <p role="alert" className={css.trouble}>{say}</p>}
        {reading && mayAnswer && (
          <form action={post} onSubmit={submit} className={css.form}>
            <input type="hidden" name="photoId" value={photo.id} />
            <Answers key={`${reading.state}\n${reading.text}`} reading={reading} typed={said.say === null ? null : said.text} isBusy={isBusy} />
          </form>
        )}
      </div>
      {reading && mayAnswer && reading.state !== "reading" && <Where photo={photo} reading={reading} isOpen={isFramed} readThere={readThere} />}
    </div>
  );
}

/** The label, cut out of its photo, and its words; the names of fibres stand out, what is unsure is dotted. */
function Words({ reading }: { reading: LabelReadingView }) {
  const { x, y, width, height } = reading.crop;
  const unsure = reading.lines.flat().some((w) => w.unsure);
  return (
    <>
      <div className={css.crop} role="img" aria-label="The label, cut out of the photo" style={{ aspectRatio: `${width * reading.photo.width} / ${height * reading.photo.height}` }}>
        <img src={`/photos/${reading.photoId}/1600`} alt="" style={{ width: `${100 / width}%`, left: `${(-100 * x) / width}%`, top: `${(-100 * y) / height}%` }} />
      </div>
      <p className={css.words} dir="auto">
        {reading.lines.map((line, n) => (
          <span key={n} className={css.line}>
            {line.map((w, k) => <span key={k}>{k > 0 && " "}{w.isFibre ? <mark className={w.unsure ? css.unsure : undefined}>{w.text}</mark> : <span className={w.unsure ? css.unsure : undefined}>{w.text}</span>}</span>)}
          </span>
        ))}
      </p>
      {unsure && isAsked(reading.state) && <p className="small">Please look twice at the dotted words: they were hard to read.</p>}
    </>
  );
}

/** Yes, no, or cannot tell; where nothing was read, only what stands there. */
function Answers({ reading, typed, isBusy }: { reading: LabelReadingView; typed: string | null; isBusy: boolean }) {
  const field = useId();
  const { state } = reading;
  const isOpen = typed !== null || isToWrite(state);
  const write = (
    <div className={css.write}>
      <label htmlFor={field}>What stands on the label</label>
      <textarea id={field} name="text" dir="auto" rows={Math.max(3, reading.lines.length + 1)} maxLength={2_000} defaultValue={typed ?? reading.text} />
      <button className="button" name="answer" value="corrected" disabled={isBusy}>Keep these words</button>
    </div>
  );
  if (isToWrite(state)) return <>{write}<p className={css.others}><Other answer="no-label" isBusy={isBusy} /></p></>;
  if (!isAsked(state) || reading.lines.length === 0) return <Fold says={state === "reading" || state === "refused" ? "Write what it says yourself" : "Correct the words"} isOpen={isOpen}>{write}</Fold>;
  return (
    <fieldset className={css.question}>
      <legend>Is this right?</legend>
      <button className="button" name="answer" value="right" disabled={isBusy}>Yes, that is what it says</button>
      <Fold says="No, it says something else" isOpen={isOpen}>{write}</Fold>
      <div className={css.answers}>
        {state !== "unsure" && <Other answer="unsure" isBusy={isBusy} />}
        <Other answer="no-label" isBusy={isBusy} />
      </div>
    </fieldset>
  );
}

const OTHERS = { unsure: "I cannot tell", "no-label": "This is not a label" } as const;
const Other = ({ answer, isBusy }: { answer: keyof typeof OTHERS; isBusy: boolean }) => <button className={css.plain} name="answer" value={answer} disabled={isBusy}>{OTHERS[answer]}</button>;

const Fold = ({ says, isOpen, children }: { says: string; isOpen: boolean; children: ReactNode }) => <details className={css.fold} open={isOpen}><summary>{says}</summary>{children}</details>;

/** The way to show where the label lies, fetched when it is opened; hidden where there is no script to draw with. */
function Where({ photo, reading, isOpen: isOpenFirst, readThere }: { photo: Props["photo"]; reading: LabelReadingView; isOpen: boolean; readThere: (frame: Frame) => Promise<string | null> }) {
  const fold = useRef<HTMLDetailsElement>(null);
  const [isOpen, setIsOpen] = useState(isOpenFirst);
  // Opened before the page was ready, it stays open.
  useEffect(() => setIsOpen(fold.current?.open === true), []);
  return (
    <details ref={fold} className={`no-print ${css.fold} ${css.where}`} open={isOpen} onToggle={(e) => setIsOpen(e.currentTarget.open)}>
      <summary>Show where the label is</summary>
      {isOpen && <Suspense fallback={<p className="small">One moment…</p>}><FrameMarker photo={photo} found={reading.crop} read={readThere} /></Suspense>}
    </details>
  );
}
