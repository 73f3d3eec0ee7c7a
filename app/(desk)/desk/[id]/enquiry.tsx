import { Link } from "@/lib/ui/link";
import { STATE_NAMES } from "@/lib/enquiry/states";
import type { UsedParagraphs as UsedParagraphsOfDraft } from "@/lib/enquiry/read-used-paragraphs";
import type { EnquiryView } from "@/lib/enquiry/views";
import { questionLetter } from "@/lib/ui/question-letter";
import { RugEvidence } from "@/lib/ui/rug-evidence";
import type { AreaUnit } from "@/lib/words/measures";
import { Strip } from "@/lib/ui/strip";
import { toldAnswer } from "@/lib/ui/told";
import { heldInWords, waitingInWords, type Place } from "@/lib/ui/time";
import { Client, History, Letters, Received } from "./about";
import { BenchTests } from "./bench-tests";
import { Written, type Beside } from "./came";
import { Documents } from "./documents";
import { LABELS } from "./label-deeds";
import css from "./enquiry.module.css";
import { InPost } from "./in-post";
import { Keeping } from "./keeping";
import { noteOf, whenWords } from "./leaving-words";
import { LetterDesk } from "./letter-desk";
import { Meanwhile } from "./meanwhile";
import { OutdatedLetter } from "./outdated-letter";
import { letterInShort, newestOfOurs } from "./letter-in-short";
import { Move } from "./move";
import { SetAside } from "./set-aside";
import { Since } from "./since";
import { UsedParagraphs } from "./used-paragraphs";

export interface EnquiryProps {
  view: EnquiryView;
  /** What the draft was put together from. */
  used: UsedParagraphsOfDraft | null;
  now: string;
  place: Place;
  workshop: { name: string; signature: string; areaUnit: AreaUnit };
  /** What "tomorrow at eight" is on the workshop's clock: what stands in the fields of a chosen time. */
  tomorrow: { day: string; hour: string };
  mailConfigured: boolean;
  /** Ids of the bench tests that may be recorded here. */
  openTests: readonly string[];
}

/** One enquiry: evidence and letter side by side at the desk, one below the other on a phone. */
export function Enquiry({ view, used, now, place, workshop, tomorrow, mailConfigured, openTests }: EnquiryProps) {
  const several = view.rugs.length > 1;
  const first = view.rugs[0];
  const by = besideWords(view, { now, place, areaUnit: workshop.areaUnit });
  return (
    <>
      <Head view={view} now={now} place={place} />
      {!several && first && (
        <div className={css.strip}>
          <div className={css.wide}><Strip colours={first.colours} cells={130} thickness={22} /></div>
          <div className={css.narrow}><Strip colours={first.colours} cells={40} thickness={18} /></div>
        </div>
      )}
      <div className={css.two}>
        <div className={css.evidence}>
          <h1 className={css.title}><bdi>{view.title}</bdi></h1>
          <p className={css.sentence} dir="auto">{view.sentence}</p>
          <p className={css.why} dir="auto">{view.urgencyWhy}</p>
          <SetAside enquiryId={view.id} why={view.urgencyWhy} isOffered={view.may.setAside} />
          <p className={`${css.jump} no-print`}><span>{letterInShort(view)}</span> <a className="button" href="#letter">To the letter</a></p>
          {view.rugs.map((rug) => (
            <RugEvidence key={rug.id} rug={rug} locale={place.locale} areaUnit={workshop.areaUnit} isOneOfSeveral={several} labels={LABELS} blur={view.may.blur ? `/desk/${view.id}/blur` : null} measureAt={`/desk/${view.id}/photos`}
              written={<Written messages={rug.messages} {...by} decidedElsewhere={besideLetter(view)} />}
              bench={<BenchTests enquiryId={view.id} rug={rug} open={openTests} mayRecord={view.may.test} as={several ? "h3" : "h2"} now={now} place={place} />}
              correct={view.may.correct && <p className={`${css.correct} no-print`}><Link href={`/desk/${view.id}/answers/${rug.id}`}>Correct or add an answer</Link></p>} />
          ))}
          <Client view={view} />
          <Documents view={view} now={now} place={place} />
          <Received view={view} now={now} place={place} />
          <Letters view={view} now={now} place={place} />
          <Move enquiryId={view.id} from={view.state} to={view.may.moveTo} />
          {view.may.erase && <Keeping enquiryId={view.id} />}
          <UsedParagraphs used={used} />
          <History history={view.history} now={now} place={place} />
        </div>
        <LetterDesk view={view} since={<><InPost view={view} /><Meanwhile view={view} {...by} /><OutdatedLetter view={view} now={now} place={place} />{view.since && isBeside(view) && <Since since={view.since} {...by} />}</>} question={questionOf({ view, workshop })} to={<To client={view.client} />} tomorrow={tomorrow} mailNote={noteOf(view, { now, place, mailConfigured })} when={whenWords(view, { now, place, mailConfigured })} />
      </div>
    </>
  );
}

function Head({ view, now, place }: Pick<EnquiryProps, "view" | "now" | "place">) {
  const { at, of, nextId } = view.place;
  const held = view.state === "their_turn" ? (newestOfOurs(view.letters.filter((l) => l.state === "held"))?.notBefore ?? null) : null;
  return (
    <div className={css.top}>
      <span className="small">
        <Link href="/desk">This morning</Link>{of > 0 && at > 0 && <span className="num"> · {at} of {of}</span>}{nextId && <> · <Link href={`/desk/${nextId}`}>Next</Link></>}
      </span>
      <span className="small num">{view.reference} · <time dateTime={view.submittedAt}>{waitingInWords(view.submittedAt, now).spoken}</time> · {heldInWords(held, now, place) ?? STATE_NAMES[view.state]} · {CHANNELS[view.channel]}</span>
    </div>
  );
}
const CHANNELS = { web: "by the web form", email: "by e-mail", telephone: "by telephone" } as const;

function To({ client }: { client: EnquiryView["client"] }) {
  return <><bdi>{client.name}</bdi>{client.email ? <>, <bdi>{client.email}</bdi></> : ", who left no e-mail address"}</>;
}

/** What is said beside the client's words, wherever they stand. */
function besideWords({ id, answers, client, rugs, may }: EnquiryView, { areaUnit, ...at }: Pick<EnquiryProps, "now" | "place"> & { areaUnit: AreaUnit }): Beside {
  const figures = { locale: at.place.locale, areaUnit };
  const corrects = rugs.flatMap((rug) => rug.corrections.map(({ at: written, of, step }) => ({ at: written, ...toldAnswer(of, { ...answers, ...rug.answers }, figures), href: may.correct ? `/desk/${id}/answers/${rug.id}/${step}` : null })));
  return { name: client.name, ...at, corrects };
}

/** Before the first letter, a message that held it back is told of there. */
const isBeside = ({ since, meanwhile }: EnquiryView): boolean => since?.at !== null || meanwhile === null;

/** Messages from other addresses that stand above the letter. */
const besideLetter = ({ since, meanwhile }: EnquiryView): string[] =>
  [...(since?.messages ?? []), ...(meanwhile?.messages ?? [])].flatMap((m) => [m.other, m.owned].flatMap((by) => (by ? [by.postId] : [])));

/** "Ask for more" begins with the words of a question that was taken back, or else with the questions of every rug, each once, most helpful first. */
function questionOf({ view, workshop }: { view: EnquiryView; workshop: EnquiryProps["workshop"] }) {
  const last = view.letters.findLast((l) => l.kind !== "acknowledgement");
  if (last?.kind === "question" && last.state === "taken_back") return { subject: last.subject, text: last.text.trim() };
  const all = view.rugs.flatMap((r) => r.letter?.asks ?? []);
  const questions = all.filter((q, i) => all.findIndex((o) => o.id === q.id) === i);
  return questionLetter({ reference: view.reference, name: view.client.name, questions, signature: workshop.signature, workshop: workshop.name, rang: view.channel === "telephone", hasPage: view.client.email !== null });
}
