import type { FibreId } from "../../trade/fibres";
import { LATEST_RATE_YEAR } from "../../trade/price-index";
import type { Assessment, Range } from "../../triage/assessment";
import { paidInShop } from "../../triage/price-evidence";
import { notStatedIn } from "../../words/judged";
import { money as sum } from "../../words/measures";
import type { Words } from "../../words/words";
import { listed, moneyEstimate, AMOUNT_PHRASES } from "../phrases";
import { paragraph, small, type Block } from "./blocks";
import { isFlooded } from "./report-cautions";

interface Priced {
  readonly assessment: Assessment;
  /** What new edges would cost; null where cutting it down is not considered. */
  readonly cutDown: Range | null;
}

const SILKS: readonly FibreId[] = ["silk", "wool-silk"];
const isSoldAsSilk = ({ findings }: Assessment): boolean => findings.some((f) => f.what === "sellerSaid" && (f.value === "silk" || f.value === "wool-and-silk"));

/** Ranges of money; how value today is worked out (lib/trade/depreciation.ts), for a reader who has a table of their own. */
export function moneyBlocks({ assessment, cutDown }: Priced, words: Words): Block[] {
  const { say } = words;
  const { money, why, fibres } = assessment;
  if (!money) return [paragraph(why.money ? notStatedIn(words, why.money) : say("report.no-money"))];
  const work = isFlooded(assessment) ? [] : [["report.clean", money.clean, moneyEstimate], ["report.cut-down", cutDown, moneyEstimate]] as const;
  const rows = ([...work, ["report.replace", money.replace, AMOUNT_PHRASES.replace], ["report.value-today", money.valueToday, AMOUNT_PHRASES.valueToday]] as const)
    .flatMap(([what, r, written]) => (r ? [[say(what), written(r, money.currency, words)]] : []));
  return [
    ...(rows.length > 0 ? [{ kind: "table" as const, caption: say("report.money-caption"), head: [say("report.what"), say("report.range")], rows }] : []),
    ...(money.replace ? [small(howPriced(assessment, money.currency, words))] : []),
    ...(money.replace && isSoldAsSilk(assessment) && !SILKS.includes(fibres[0]?.fibre ?? "other") ? [small(say("report.sold-as-silk"))] : []),
    ...(money.valueToday && money.replace ? [small(say("report.how-valued", { percent: Math.round(100 * (money.valueToday.median / money.replace.median)) }))] : []),
    ...(why.money ? [paragraph(notStatedIn(words, why.money))] : []),
  ];
}

/** The tables of prices and of consumer prices count in pounds. */
const TABLES_IN = "GBP";

/** What the price of a new one goes by, and at which rates it was exchanged (lib/trade/price-index.ts). */
function howPriced(assessment: Assessment, currency: string, words: Words): string {
  const { say, locale } = words;
  const latest = String(LATEST_RATE_YEAR);
  const back = currency === TABLES_IN ? [] : [latest];
  const rates = (all: readonly string[]) => { const years = [...new Set(all)]; return { years: years.length, rates: listed(years, "and", words), latest }; };
  const paid = paidInShop(assessment);
  if (!paid) return say("report.priced-judged", rates(back));
  const there = paid.currency === TABLES_IN ? [] : [String(paid.rateYear)];
  return say("report.priced-paid", {
    price: sum(paid.amount, paid.currency, locale), dated: paid.year === null ? "no" : "yes", year: String(paid.year ?? ""), ...rates([...there, ...back]),
  });
}
