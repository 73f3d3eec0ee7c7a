import "server-only";
import { database, type Prisma } from "../store/database";
import { NEWEST_FIRST, OLDEST_FIRST } from "../store/row-order";
import { likelyMechanisms } from "../reply/facts";
import { isFoul, isGasTold, isMouldy, isMouldyAsJudged } from "../reply/happened";
import { treatedFirst, treatedOf } from "../reply/treated-first";
import { DECADES, lifePhrase } from "../reply/phrases";
import { titleIn } from "../reply/rug-title";
import { longDate } from "../words/measures";
import { wordsIn, type Words } from "../words/words";
import { readSettings, type WorkshopSettings } from "../workshop/settings";
import { authorise, NOT_THERE } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { clientStanding, isEnded } from "./client-standing";
import { mayEraseAlone } from "./erase-enquiry";
import { wasGivenUp } from "../mail/last-word";
import { isLetGo, leftAt } from "./let-go";
import { enclosureViews, LETTER_PARTS, wordsOfLetter } from "./letter-view";
import { CLIENT } from "./measurement-findings";
import { clientSpots } from "./measurement-view";
import { OWNED_DEEDS } from "./messages";
import { photoViews, rugColours } from "./photo-view";
import { LIMITS } from "./limits";
import { answeredAt, assessmentOf, enquiryAnswersOf, rugAnswersOf, writtenOf } from "./stored";
import { unopenedPhotos } from "./unopened";
import { urgenciesOfWords } from "./unread-letters";
import { firstAidOf } from "./wet-by-words";
import type { ClientView } from "./client-view";

const BESIDE = { select: { reference: true, rugs: { orderBy: { position: "asc" }, select: { title: true } } } } as const;
const PARTS = {
  joinedTo: BESIDE,
  joined: { orderBy: { submittedAt: "asc" }, ...BESIDE },
  client: { select: { name: true } },
  rugs: { orderBy: { position: "asc" }, include: { answers: true, photos: { orderBy: { position: "asc" }, include: { measurements: true, label: true } }, assessments: { orderBy: NEWEST_FIRST.createdAt } } },
  post: { orderBy: OLDEST_FIRST.arrivedAt, select: { id: true, leftOut: true } },
  audit: { where: OWNED_DEEDS, orderBy: OLDEST_FIRST.at, select: { at: true, action: true, detail: true } },
  letters: {
    where: { automatic: false, state: { not: "taken_back" } },
    orderBy: OLDEST_FIRST.createdAt,
    include: LETTER_PARTS,
  },
} as const satisfies Prisma.EnquiryInclude;
type Row = Prisma.EnquiryGetPayload<{ include: typeof PARTS }>;

const NOT_JUDGED = { mechanisms: [] };

/** A client's own page: what they sent, and what a person has answered. No judgement stands on it before a reply has been approved and let go. */
export async function readClientPage(caller: Caller, now: Date): Promise<Result<ClientView>> {
  const no = authorise(caller, "read-own-page");
  if (no || caller.kind !== "client") return no ?? NOT_THERE;
  const [row, workshop] = await Promise.all([database().enquiry.findUnique({ where: { id: caller.enquiryId }, include: PARTS }), readSettings()]);
  if (!row) return NOT_THERE;
  const letters = standingLetters(row.letters.filter((l) => isLetGo(l, now)));
  const replies = letters.filter((l) => l.kind === "reply");
  const words = wordsIn(workshop.locale);
  const replied: Replied = { at: replies.at(-1)?.createdAt ?? null, texts: replies.map((l) => l.text), words, workshop };
  const rugs = row.rugs.map((r) => ({ answers: rugAnswersOf(r.answers), assessment: r.assessments[0] ? assessmentOf(r.assessments[0].result) : null }));
  const newest = rugs.flatMap(({ assessment }) => assessment ?? []);
  const judged = rugs.map(({ answers, assessment }) => ({ answers, assessment: assessment ?? NOT_JUDGED }));
  const firstAid = firstAidOf(newest, urgenciesOfWords(row));
  const first = row.rugs[0];
  // What staff took down or corrected is their wording, and not shown back as the client's.
  const own = row.rugs.flatMap((r) => r.answers).filter((a) => a.from === CLIENT);
  return ok({
    reference: row.reference,
    workshop: { name: workshop.name, email: workshop.email || null, telephone: workshop.telephone || null },
    clientName: row.client.name,
    submittedAt: row.submittedAt.toISOString(),
    standing: clientStanding(row.state, letters.at(-1)?.kind ?? null, words),
    firstAid: { isNow: firstAid !== null && letters.length === 0, handsOff: firstAid === "hands-off" || judged.some(isFoul), isGas: firstAid !== null && judged.some(({ answers }) => isGasTold(answers)) },
    isMouldFeared: letters.length === 0 && judged.some(isMouldy),
    rugs: row.rugs.map((rug) => ({ ...rugForClient(rug, replied), title: titleIn(rug.title, words, workshop.areaUnit) })),
    written: writtenOf(own).map(({ at, text }) => ({ at: at.toISOString(), text })),
    answers: own.length > 0 ? enquiryAnswersOf(row.answers).answers : {},
    beside: [row.joinedTo ?? [], row.joined].flat().map(({ reference, rugs }) => ({ reference, rugs: rugs.map((r) => titleIn(r.title, words, workshop.areaUnit)) })),
    letters: letters.map((l) => ({ subject: l.subject, text: wordsOfLetter(l), at: leftAt(l, now).toISOString(), by: l.approvedBy?.name ?? null, enclosures: enclosureViews(l.enclosures) })),
    unopened: first ? unopenedPhotos({ submittedAt: row.submittedAt, posts: row.post, audit: row.audit, answers: first.answers, photos: first.photos }).map((u) => u.name) : [],
    canAddPhotos: !isEnded(row.state),
    photosLeft: first ? Math.max(0, LIMITS.maxPhotos - first.photos.length) : 0,
    copy: row.id,
    mayErase: mayEraseAlone(row.state),
  });
}

/** What a client may go by: nothing that was given up here, nor what did not get through and has been written anew since. */
const standingLetters = (letters: Row["letters"]): Row["letters"] =>
  letters.filter((l, at) => l.state !== "failed" || (!wasGivenUp(l.lastResponse) && !letters.slice(at + 1).some(({ kind }) => kind === l.kind)));

/** What the replies that have left said, the time of the newest, and the words and the clock they are written by. */
interface Replied { at: Date | null; texts: readonly string[]; words: Words; workshop: WorkshopSettings }
const plainly = (text: string): string => text.replaceAll("\u00a0", " ");

/** Of the assessment that stood when the reply was approved; a newer one was read by nobody yet. */
function rugForClient(rug: Row["rugs"][number], { at: replied, texts, words, workshop }: Replied): Omit<ClientView["rugs"][number], "title"> {
  const approved = replied ? rug.assessments.find((a) => a.createdAt <= replied) : undefined;
  const judged = approved ? assessmentOf(approved.result) : null;
  const life = judged?.lifeYears ?? null;
  const own = rug.answers.filter((a) => a.from === CLIENT);
  const [answers, since] = [rugAnswersOf(own), answeredAt(own, "since")];
  return {
    answers,
    sinceToldOn: since && longDate(since, workshop),
    photos: photoViews(rug.photos, answers.labelText),
    spots: clientSpots(rug.photos),
    colours: rugColours(rug.photos),
    // Years that no letter has told, as after a flood or for want of room, and those it tells as decades, have no band on the page.
    lifeYears: life && life.high < DECADES && texts.some((text) => plainly(text).includes(plainly(lifePhrase(life, words)))) ? life : null,
    lifeOnce: judged && treatedFirst(treatedOf({ isMouldy: isMouldyAsJudged(judged), likely: likelyMechanisms(judged) })),
  };
}
