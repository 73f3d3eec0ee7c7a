"use client";
import { lazy, Suspense, useActionState, useEffect, useRef, useState, useTransition, type FormEvent } from "react";
import { inForce, isAsked, isGuess, isSettled, type Frame, type LabelReadingView, type LabelWord, type LabelWords } from "../enquiry/label-view";
import type { PhotoView } from "../enquiry/views";
import type { LabelSays } from "../words/label-says";
import { Answers } from "./label-answers";
import { FRESH_LABEL, type LabelDeeds, type LabelFormState } from "./label-form";
import css from "./label-reading.module.css";
import { isTold, isToWrite, namesIn, saysOf } from "./label-words";
import { useLabelReading } from "./use-label-reading";

const FrameMarker = lazy(() => import("./marking/frame-marker").then((m) => ({ default: m.FrameMarker })));

interface Props { photo: Pick<PhotoView, "id" | "width" | "height" | "label">; deeds: LabelDeeds; mayAnswer?: boolean; isFramed?: boolean }

/** What was read of a label, whether it is right, and where in the photo it lies. Works without script, but for the frame; while the label is being read the page looks again by itself. */
export function LabelReading({ photo, deeds, mayAnswer = true, isFramed = false }: Props) {
  const { says } = deeds;
  const [posted, post] = useActionState(deeds.answer, FRESH_LABEL);
  const { reading: newest, trouble, take } = useLabelReading({ photoId: photo.id, kept: posted.reading ?? photo.label, look: deeds.look });
  // Whoever is not asked sees what counts.
  const reading = newest && !mayAnswer ? inForce(newest) : newest;
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
      const result = await deeds.answer(said, form).catch((): LabelFormState => ({ ...said, attempt: said.attempt + 1, say: says["label.lost"] }));
      if (result.reading && result.say === null) take(result.reading);
      setAnswered(result);
    });
  };
  const readThere = async (frame: Frame): Promise<string | null> => {
    const result = await deeds.frame({ photoId: photo.id, frame }).catch(() => null);
    if (!result?.ok) return result?.say ?? says["label.lost"];
    take(result.value);
    setAnswered(null);
    status.current?.focus();
    return null;
  };
  const say = said.say ?? trouble;
  return (
    <div className={isFramed ? `${css.reading} ${css.framed}` : css.reading}>
      <div className={css.said}>
        {reading && isTold(reading) && (
          <>
            <p className={css.part}>{says["label.you-wrote"]}</p>
            <p className={`${css.words} ${css.told}`} dir="auto">{reading.typed}</p>
          </>
        )}
        {reading?.told && !isToWrite(reading) && (
          <>
            <p className={css.part}>{says["label.told"]}</p>
            <p className={`${css.words} ${css.told}`} dir="auto">{reading.told}</p>
            {!reading.agreed && <p className={css.part}>{says["label.in-photo"]}</p>}
          </>
        )}
        {reading?.agreed && (
          <>
            <p className={css.part}>{says["label.agreed"]}</p>
            <Words of={reading} words={reading.agreed} says={says} />
            <p className={css.part}>{says["label.in-frame"]}</p>
          </>
        )}
        {reading && reading.lines.length > 0 && reading.state !== "refused" && <Words of={reading} words={isGuess(reading) ? { ...reading, lines: [] } : reading} says={says} />}
        {reading && isAsked(reading.state) && !isGuess(reading) && hasUnsure(reading) && <p className="small">{says["label.dotted"]}</p>}
        <p ref={status} role="status" tabIndex={-1} className={css.status}>{reading ? saysOf(says, reading) : trouble === null && says["label.reading"]}</p>
        {(!reading || reading.state === "reading") && <noscript><p className={css.status}><a href="">{says["label.again"]}</a></p></noscript>}
        {say && <p role="alert" className={css.trouble}>{say}</p>}
        {reading && mayAnswer && (
          <form action={post} onSubmit={submit} className={css.form}>
            <input type="hidden" name="photoId" value={photo.id} />
            <Answers key={`${reading.state}\n${reading.text}`} reading={reading} says={says} typed={said.say === null ? null : said.text} isBusy={isBusy} />
          </form>
        )}
      </div>
      {reading && mayAnswer && reading.state !== "reading" && (isFramed || !isSettled(reading.state)) && <Where photo={photo} reading={reading} says={says} isOpen={isFramed} readThere={readThere} />}
    </div>
  );
}

const hasUnsure = ({ lines }: LabelWords): boolean => lines.flat().some((w) => w.unsure);

/** A label, cut out of its photo and turned upright, and its words; the names of fibres stand out, what is unsure is dotted. */
function Words({ of, words, says }: { of: Pick<LabelReadingView, "photoId" | "photo">; words: LabelWords; says: LabelSays }) {
  const { x, y, width, height } = words.crop;
  const isOnItsSide = words.quarters % 2 === 1;
  const [across, down] = [width * of.photo.width, height * of.photo.height];
  const turned = { width: `${isOnItsSide ? (100 * across) / down : 100}%`, height: `${isOnItsSide ? (100 * down) / across : 100}%`, rotate: `${-90 * words.quarters}deg` };
  return (
    <>
      <div className={css.crop} role="img" aria-label={says["label.crop"]} style={{ aspectRatio: isOnItsSide ? `${down} / ${across}` : `${across} / ${down}` }}>
        <div className={css.turned} style={turned}>
          <img src={`/photos/${of.photoId}/1600`} alt="" style={{ width: `${100 / width}%`, left: `${(-100 * x) / width}%`, top: `${(-100 * y) / height}%` }} />
        </div>
      </div>
      {words.lines.length > 0 && (
        <p className={css.words} dir="auto">
          {words.lines.map((line, n) => (
            <span key={n} className={css.line}>
              {namesIn(line).map((name, k) => <span key={k}>{k > 0 && " "}<Name words={name} /></span>)}
            </span>
          ))}
        </p>
      )}
    </>
  );
}

/** One name, whole, or one word that is none; dotted where any word of it is unsure. */
function Name({ words }: { words: readonly LabelWord[] }) {
  const As = words.some((w) => w.isFibre) ? "mark" : "span";
  return <As className={words.some((w) => w.unsure) ? css.unsure : undefined}>{words.map((w) => w.text).join(" ")}</As>;
}

/** The way to show where the label lies, fetched when it is opened; hidden where there is no script to draw with. */
function Where({ photo, reading, says, isOpen: isOpenFirst, readThere }: { photo: Props["photo"]; reading: LabelReadingView; says: LabelSays; isOpen: boolean; readThere: (frame: Frame) => Promise<string | null> }) {
  const fold = useRef<HTMLDetailsElement>(null);
  const [isOpen, setIsOpen] = useState(isOpenFirst);
  // Opened before the page was ready, it stays open.
  useEffect(() => setIsOpen(fold.current?.open === true), []);
  return (
    <details ref={fold} className={`no-print ${css.fold} ${css.where}`} open={isOpen} onToggle={(e) => setIsOpen(e.currentTarget.open)}>
      <summary>{says["label.show"]}</summary>
      {isSettled(reading.state) && <p className="small">{says["label.stays"]}</p>}
      {isOpen && <Suspense fallback={<p className="small">{says["label.moment"]}</p>}><FrameMarker photo={photo} found={reading.crop} read={readThere} says={says} /></Suspense>}
    </details>
  );
}
