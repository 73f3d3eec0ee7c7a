import { fibreName } from "../trade/fibres";
import { ACTIONS, REFERRALS } from "../trade/losses";
import type { ActionId, Assessment, MechanismId } from "../triage/assessment";
import { readTold } from "../triage/told";
import { isGasTold } from "../triage/urgency";
import { capital } from "../words/capital";
import type { Words } from "../words/words";
import { isOnlySmellTold } from "./damage-told";
import { certainty, isFibreOpen, likelyMechanisms } from "./facts";
import { actionSeen, verdictIn } from "./inspected";
import { actionOf } from "./kept-whole";
import { isMixtureOnLabel, namedFibres } from "./label-said";
import { mechanismIn } from "./mechanism-name";
import { mendedIn, type Mended } from "./mended";
import { improvementFigures, lifePhrase, likelihood, AMOUNT_PHRASES } from "./phrases";
import { firmsFor } from "./treated-first";
import type { ToldByLetter } from "./told-by-letter";

/** What a headline goes by beside the assessment. */
export interface Known { readonly letter: ToldByLetter; readonly words: Words }

export const WORDS_TOLD = "They write of water, and nobody has asked about it yet.";
const ONLY_INSPECTION = "It is provisional: nobody here has inspected it, and only an inspection could change it.";
const IS_OPEN: Partial<Record<ActionId, string>> = {
  "routine-clean": "Whether cleaning is worth its cost is open from here.",
  "advise-claim-or-replacement": "Whether cleaning would be worth its cost is open from here: no money should be spent on it unseen.",
};
const NOT_CUT_DOWN = "By its judgement alone we would propose cutting it down; somebody here decided otherwise on its plan.";
const NO_TIME = { little: "The letter sets no time: haste would gain too little.", worth: "The letter sets no time: the work is likely not worth its cost.", untold: "The letter sets no time." } as const;
const FLOODED = "Flood or waste water got into it: nobody touches it before the flood firm has seen it.";
const FLOOD_SEEN = "Flood or waste water got into it, and that can make people ill.";

const sentence = (text: string): string => `${capital(text)}${/[.?]”$/.test(text) ? "" : "."}`;
const answered = ({ findings }: Assessment, what: string): string[] =>
  findings.filter((f) => f.what === what).flatMap((f) => [f.value].flat()).filter((v) => typeof v === "string");

/** How likely a mechanism is, in words: "mould is very likely". */
const howLikely = (a: Assessment, mechanism: MechanismId, words: Words): string =>
  `${mechanismIn(a, mechanism, words)} is ${likelihood(a.mechanisms.find((m) => m.mechanism === mechanism)?.probability ?? 0)}`;

/** The trouble that is spoken of first; where there is none, soil, if the letter speaks of it, or what comes next, or the smell that is all that was told. */
const trouble = (a: Assessment, { words, letter }: Known): string | null => {
  const likely = likelyMechanisms(a);
  if (likely[0] === "soil-only" && isOnlySmellTold(a)) return "nothing but a smell was told";
  const named = likely.find((m) => m !== "soil-only" || letter.isSoilTold);
  return named === undefined ? null : howLikely(a, named, words).replace("soil only", "ordinary soil");
};

/** What of the rug a share may mend. */
const MENDED: Readonly<Record<Mended, string>> = {
  soil: "of the soil may come out", dried: "of whatever is to be seen once it is dry may come out", seen: "of whatever is to be seen may come out", pile: "of what its surface has lost may come back", colour: "of the change may go", rest: "of what is no matter for repair may come out", mark: "of the mark may go", trouble: "of the trouble may go",
};
/** How far it comes back, where the letter tells it, and of what, as it does; else why not. */
function back(a: Assessment, { letter }: Known): string | null {
  return letter.comesBackOpen ?? (a.improvement && `by cleaning ${improvementFigures(a.improvement)} ${MENDED[mendedIn(a)]}`);
}

/** The fibres that both fit, where none is known; of a mixture, as in the letter, that its label names one. */
function openFibres(a: Assessment): string | null {
  if (certainty(a) === "unknown" && isMixtureOnLabel(a)) return "the fibre is open: its label names a mixture, and how a mixture cleans only a test can show";
  const [leading, rival] = namedFibres(a);
  return isFibreOpen(a) && leading && rival ? `the fibre is open: ${fibreName(leading)} comes first, then ${fibreName(rival)}` : null;
}

/** What the work costs beside what the rug, or where that is not known a new one, may be worth. */
function costAgainstWorth({ money }: Assessment, words: Words): string | null {
  const worth = money?.valueToday ?? money?.replace;
  if (!money?.clean || !worth) return null;
  const amount = (of: keyof typeof AMOUNT_PHRASES, range: typeof worth) => AMOUNT_PHRASES[of](range, money.currency, words);
  return `cleaning costs about ${amount("clean", money.clean)}, and ${money.valueToday ? `the rug may be worth ${amount("valueToday", worth)} today` : `a new one ${amount("replace", worth)}`}`;
}

/** What speaks against the work, as the letter has it: the trouble and how little of it comes back, few years, or what the work costs beside what the rug is worth. */
function against(a: Assessment, known: Known): string[] {
  const { letter: { against: by }, words } = known;
  const cost = costAgainstWorth(a, words);
  if (by === "cost" && cost) return [cost];
  const years = by === "years" && a.lifeYears ? `it may serve ${lifePhrase(a.lifeYears, words)} more` : null;
  return [trouble(a, known), back(a, known), years, by === "worth" ? cost ?? "it hangs on what the rug is worth today, which is not known" : null].flatMap((s) => s ?? []);
}

/** What first aid is for: what may be gas, what is wet, or what was within the day. */
function whatIsAided(a: Assessment): string {
  const [wet] = answered(a, "wetNow").filter((v) => v === "wet" || v === "damp");
  const what = isGasTold(readTold(a.findings)) ? "what was put on it may give off a harmful gas" : wet === "wet" ? "it is wet now" : wet === "damp" ? "it is still damp" : "something wet got on it within the day";
  return `${what}, and that comes before everything else`;
}

/** Whose hands it first belongs in, by what. */
export function whyElsewhere(a: Assessment, { words }: Known): string[] {
  if (answered(a, "age").includes("antique")) return ["it is an old piece, and that is for a conservator to judge"];
  const grave = (["mould", "insects"] as const).filter((m) => likelyMechanisms(a).includes(m));
  return grave.map((m) => howLikely(a, m, words));
}

type Reason = (a: Assessment, known: Known) => readonly (string | null | undefined)[];
/** What of this enquiry decided an action, in parts of which each is a sentence. */
const REASONS: Readonly<Record<ActionId, Reason>> = {
  "leave-alone": (a, known) => (likelyMechanisms(a).some((m) => m !== "soil-only") ? [trouble(a, known), back(a, known)] : ["nothing was told that work would mend, and every cleaning costs a pile something"]),
  "routine-clean": (a, known) => [trouble(a, known), back(a, known)],
  "first-aid": (a) => [whatIsAided(a)],
  "ask-for-more": (a, { letter: { ask } }) => [openFibres(a) ?? (answered(a, "incidents").length === 0 ? "nobody has said what happened to it" : null), ask && `ask first: “${ask.ask}”`],
  "inspect-and-test": (a, known) => [openFibres(a), trouble(a, known), back(a, known)],
  "quote-with-limits": (a, known) => [trouble(a, known), back(a, known)],
  "advise-cut-down": (a, known) => [...against(a, known), "the sound part can still serve"],
  "advise-claim-or-replacement": against,
  refer: whyElsewhere,
  "not-our-work": (a, { words }) => [costAgainstWorth(a, words)],
};

/** What there is to do: what is advised, but an inspection, as the letter says, where more would be asked for and the letter has nothing to ask. */
export function actionTold(a: Assessment, { inspection, ask }: ToldByLetter): ActionId {
  const action = actionSeen({ assessment: a, inspection });
  return action === "ask-for-more" && ask === null ? "inspect-and-test" : action;
}

/** Whom the letter names first, but for whom the judgement itself refers it to. */
function firmsNamed(action: ActionId, { advice }: Assessment, { letter: { firstTo } }: Known): string[] {
  const referred = action === "refer" ? REFERRALS.find(({ to }) => to === advice.referTo)?.when : undefined;
  return firstTo.some((what) => what !== referred) ? [`The letter says that this is for ${firmsFor(firstTo)}.`] : [];
}

/** How a headline tells of worth: that it is likely not worth its cost, or that this is open. */
interface Worth { readonly isHardlyWorth: boolean; readonly isOpen: boolean }

/** What of this enquiry decided the advice, with the figures a letter tells and no other; where nothing of it stands out, what holds of every such advice. */
export function reasonOf(a: Assessment, known: Known, { isHardlyWorth, isOpen }: Worth): string {
  const { inspection } = known.letter;
  const action = actionTold(a, known.letter);
  const isFlooded = known.letter.isHeldBack === "flood";
  const verdict = inspection ? [verdictIn(inspection, known.words)] : [];
  if (isFlooded && action !== "first-aid") return [...verdict, inspection ? FLOOD_SEEN : FLOODED, ...(inspection ? whyElsewhere(a, known).map(sentence) : [])].join(" ");
  const parts = [...REASONS[action](a, known), ...(isHardlyWorth ? against(a, known) : [])];
  const said = [...verdict, ...new Set(parts.flatMap((part) => (part ? sentence(part) : [])))];
  const after = [(isHardlyWorth ? ONLY_INSPECTION : isOpen ? IS_OPEN[action] : null) ?? [], actionOf(a) === a.advice.action ? [] : NOT_CUT_DOWN, known.letter.setsNoTime ? NO_TIME[known.letter.setsNoTime] : [], firmsNamed(action, a, known)].flat();
  return [...(said.length > 0 ? said : [(action === a.advice.action && a.advice.why) || ACTIONS[action].why]), ...after].join(" ");
}
