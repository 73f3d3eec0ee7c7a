import { BENCH_TESTS, type TestId } from "../trade/bench-tests";
import { FIBRE_IDS, type FibreId } from "../trade/fibres";
import { ROW_IDS } from "../trade/improvement";
import { LOSSES } from "../trade/losses";
import { PHOTO_KINDS, QUESTIONS, type PhotoKind, type QuestionId } from "../trade/questions";
import {
  ALWAYS_ASKED, ASKED_AFTER, BENCH_TEST, DAMAGE_PHOTOS, DAMAGE_QUESTIONS, FIBRE_PHOTOS, FIBRE_QUESTIONS, MOST_NEXT_QUESTIONS, WORTH_ASKING,
} from "../trade/questions-value";
import { leastNow, openDamageLoss, priced, type Decision, type Priced } from "./advice";
import type { Assessment } from "./assessment";
import { possibleFindings } from "./evidence";
import type { Finding } from "./finding";
import type { Told } from "./told";

type Fibres = Readonly<Record<FibreId, number>>;
type Next = Assessment["nextQuestions"][number];

/** What next-question needs of belief, and the bench tests that may be proposed. */
export interface Asking {
  readonly benchTests?: readonly string[] | undefined;
  readonly hypothetical: (extra: readonly Finding[]) => Fibres;
  readonly answerDistribution: (what: string) => readonly { finding: Finding; probability: number }[];
}

type Kind = Next["kind"];
interface Worth { readonly id: string; readonly kind: Kind; readonly drop: number; readonly bits: number; readonly trouble: number }

const entropyBits = (p: readonly number[]): number => p.reduce((sum, x) => (x > 0 ? sum - x * Math.log2(x) : sum), 0);
const fibreBits = (fibres: Fibres): number => entropyBits(FIBRE_IDS.map((f) => fibres[f]));

/** Expected drop in loss and in bits from an answer about the fibre, over its possible answers. */
function worthOfFibreAnswer({ what, kind }: Candidate, d: Decision, { asking, priced: p }: { asking: Asking; priced: Priced }): { drop: number; bits: number } {
  const answers = asking.answerDistribution(what);
  if (answers.length === 0) return { drop: 0, bits: 0 };
  const now = { loss: leastNow(d, d.fibres, p), bits: fibreBits(d.fibres) };
  const strength = what === "label" ? ("label-photo" as const) : ("photo" as const);
  let [loss, bits] = [0, 0];
  for (const { finding, probability } of answers) {
    const fibres = asking.hypothetical([kind === "photo" ? { ...finding, strength } : finding]);
    loss += probability * leastNow(d, fibres, p);
    bits += probability * fibreBits(fibres);
  }
  return { drop: Math.max(0, now.loss - loss), bits: Math.max(0, now.bits - bits) };
}

/** What is open about the damage, in bits: the entropy of the ruling row where the fibre is known, over fibres. */
const openDamageBits = (d: Decision): number =>
  FIBRE_IDS.reduce((sum, f) => sum + d.fibres[f] * entropyBits(ROW_IDS.map((r) => d.rows[f][r])), 0);

const TROUBLES = { question: "trouble-question", photo: "trouble-photo", "bench-test": "trouble-bench" } as const;
/** What it costs to ask, to photograph or to test; a test by its minutes. */
function troubleOf({ id, kind }: Pick<Worth, "id" | "kind">, d: Decision): number {
  const loss = d.losses?.[TROUBLES[kind]] ?? LOSSES[TROUBLES[kind]].loss;
  return kind === "bench-test" ? (loss * BENCH_TESTS[id as TestId].takes.minutes) / BENCH_TEST.minutes : loss;
}

/** Whether a question is open: not answered, and the one it hangs on is. */
const isOpen = (id: QuestionId, told: Told): boolean =>
  !told.answered(id) && (ASKED_AFTER[id]?.anyOf.some((a) => told.has(a)) ?? true);
/** Sent already; or a label that is not there to be photographed, or was read in a photo of something else. */
const hasPhoto = (kind: PhotoKind, told: Told): boolean =>
  told.has(`photo:${kind}`) || (kind === "label" && (told.has("labelFound:none") || told.strength("label") === "label-photo"));

interface Candidate { readonly id: string; readonly kind: Kind; readonly what: string }

/** The tests that may be proposed: open to the workshop, telling of a fibre, not made yet. Without settings those that need no reagent. */
function openTests(told: Told, benchTests: readonly string[] | undefined): Candidate[] {
  return (Object.keys(BENCH_TESTS) as TestId[])
    .filter((id) => (benchTests ? benchTests.includes(id) : BENCH_TESTS[id].reagent === null) && told.value(`test:${id}`) === undefined)
    .map((id): Candidate => ({ id, kind: "bench-test", what: `test:${id}` })).filter((c) => possibleFindings(c.what).length > 0);
}

/** Every open question, photo and test about the fibre. */
function candidates(told: Told, benchTests: readonly string[] | undefined): Candidate[] {
  const questions = FIBRE_QUESTIONS.filter((q) => isOpen(q, told)).map((q): Candidate => ({ id: q, kind: "question", what: q }));
  const photos = (Object.entries(FIBRE_PHOTOS) as [PhotoKind, string][]).filter(([kind]) => !hasPhoto(kind, told)).map(([kind, what]): Candidate => ({ id: kind, kind: "photo", what }));
  return [...questions, ...photos, ...openTests(told, benchTests)];
}

/** Every question, photo and test worth considering with what it is worth, best first. */
export function worthOfAsking(told: Told, d: Decision, asking: Asking): Worth[] {
  const p = priced(d);
  const damage = { loss: openDamageLoss(d, p), bits: openDamageBits(d) };
  const worth = (id: string, kind: Kind, w: { drop: number; bits: number }): Worth => ({ id, kind, ...w, trouble: troubleOf({ id, kind }, d) });
  const aboutFibre = candidates(told, asking.benchTests).map((c) => worth(c.id, c.kind, worthOfFibreAnswer(c, d, { asking, priced: p })));
  const share = (settles: number) => ({ drop: damage.loss * settles, bits: damage.bits * settles });
  const aboutDamage = (Object.entries(DAMAGE_QUESTIONS) as [QuestionId, { settles: number }][]).filter(([q]) => isOpen(q, told))
    .map(([q, row]) => worth(q, "question", share(row.settles)));
  const damagePhotos = (Object.entries(DAMAGE_PHOTOS) as [PhotoKind, { settles: number }][]).filter(([kind]) => !hasPhoto(kind, told))
    .map(([kind, row]) => worth(kind, "photo", share(row.settles)));
  const all = [...aboutFibre, ...aboutDamage, ...damagePhotos];
  const byLoss = all.some((w) => w.drop >= WORTH_ASKING.drop);
  const value = (w: Worth) => (byLoss ? w.drop : w.bits) / w.trouble;
  return all.sort((a, b) => value(b) - value(a));
}

const ASKS: Readonly<Record<Kind, (id: string) => string>> = {
  photo: (id) => `Photo: ${PHOTO_KINDS[id as PhotoKind].ask.toLowerCase()}`,
  question: (id) => QUESTIONS[id as QuestionId].ask,
  "bench-test": (id) => `Bench test: ${BENCH_TESTS[id as TestId].name}`,
};

function asNext({ id, kind, drop }: Worth): Next {
  const why = drop >= WORTH_ASKING.drop
    ? "Its answer is the likeliest to change what we advise, for the trouble it is."
    : "It tells us most, though by itself it would not change what we advise.";
  return { ask: ASKS[kind](id), id, kind, why };
}

/** Tests proposed at once beside questions and photos: after one, the others say much less. Elicited. */
const MOST_TESTS = 2;

/** What to ask next: safety first if open, then the worthiest, then what is always asked; a bench test where the fibre stays open. */
export function nextQuestions(told: Told, d: Decision, asking: Asking): Next[] {
  const always = ALWAYS_ASKED.filter((a) => !told.answered(a.id)).map((a): Next => ({ ask: QUESTIONS[a.id].ask, id: a.id, kind: "question", why: a.why }));
  const ids = new Set<string>(always.map((a) => a.id));
  const worths = worthOfAsking(told, d, asking).filter((w) => !ids.has(w.id) && w.bits + w.drop > 0);
  const tests = worths.filter((w) => w.kind === "bench-test").slice(0, MOST_TESTS);
  const worthy = worths.filter((w) => w.kind !== "bench-test" || tests.includes(w)).slice(0, MOST_NEXT_QUESTIONS);
  const safety = always.filter((a) => a.id === "wetNow");
  const unsure = 1 - Math.max(...FIBRE_IDS.map((f) => d.fibres[f]));
  const test = unsure >= BENCH_TEST.openFrom && !worthy.some((w) => w.kind === "bench-test") ? worths.find((w) => w.kind === "bench-test") : undefined;
  const tested = test ? [{ ...asNext(test), why: "Words and photos never settle a fibre; a test in the workshop does." }] : [];
  return [...safety, ...worthy.map(asNext), ...always.filter((a) => a.id !== "wetNow"), ...tested];
}
