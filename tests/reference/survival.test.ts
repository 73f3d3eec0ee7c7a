import weibullCdf from "@stdlib/stats-base-dists-weibull-cdf";
import weibullQuantile from "@stdlib/stats-base-dists-weibull-quantile";
import { describe, expect, it } from "vitest";
import { FIBRE_IDS } from "../../lib/trade/fibres";
import { LIFE } from "../../lib/trade/life";
import { lifeLeft, survival } from "../../lib/triage/life";
import { belief, told } from "../unit/triage/told";
import { seeded } from "./seeded";

const YEAR = 2026;
/** Within the step of the program's search, 0.005 years. */
const STEP_YEARS = 0.006;

/** Scale of a Weibull with this median: median = scale·(ln 2)^(1/shape). */
const scaleOf = ({ medianYears, shape }: { medianYears: number; shape: number }) => medianYears / Math.LN2 ** (1 / shape);
const SINGLE = FIBRE_IDS.flatMap((f) => { const row = LIFE[f]; return "medianYears" in row ? [[f, row] as const] : []; });

describe("survival against @stdlib", () => {
  it("is one minus the Weibull distribution, for every row", () => {
    for (const [f, row] of SINGLE) for (const t of [0, 0.5, 3, 10, 40]) expect(survival(row, t), `${f} at ${t}`).toBeCloseTo(1 - weibullCdf(t, row.shape, scaleOf(row)), 12);
  });
});

describe("lifeLeft of one fibre against the conditional quantile", () => {
  const AGES = [0, 1, 4, 9];
  it.each(SINGLE)("%s: closed form, age·… and the quantile of @stdlib, for a rug bought new 0, 1, 4 and 9 years ago", (f, row) => {
    for (const age of AGES) {
      const life = lifeLeft(told({ boughtWhere: "specialist", boughtYear: YEAR - age, room: "ordinary" }), belief({ [f]: 1 }), YEAR);
      const lived = weibullCdf(age, row.shape, scaleOf(row));
      for (const [p, x] of [[0.1, life?.low], [0.5, life?.median], [0.9, life?.high]] as const) {
        // P(T ≤ age + x | T > age) = p, so age + x is the quantile at F(age) + p·(1 − F(age)).
        const byLibrary = weibullQuantile(lived + p * (1 - lived), row.shape, scaleOf(row)) - age;
        const closed = scaleOf(row) * ((age / scaleOf(row)) ** row.shape - Math.log(1 - p)) ** (1 / row.shape) - age;
        expect(Math.abs((x ?? NaN) - byLibrary), `${f} at age ${age}, ${p}`).toBeLessThan(STEP_YEARS);
        expect(closed).toBeCloseTo(byLibrary, 6);
      }
    }
  });
});

describe("lifeLeft of a mixture against 200,000 drawn lives", () => {
  it("agrees within .3 years at the 10th and 50th and 1 year at the 90th percentile; the new ones need no weighing by survival", () => {
    const fibres = { viscose: 0.5, silk: 0.3, polyamide: 0.2 } as const;
    const life = lifeLeft(told({ boughtWhere: "specialist", boughtYear: YEAR, room: "ordinary" }), belief(fibres), YEAR);
    const random = seeded(11);
    const drawn = Array.from({ length: 200_000 }, () => {
      const u = random();
      const f = u < 0.5 ? "viscose" : u < 0.8 ? "silk" : "polyamide";
      const row = LIFE[f] as { medianYears: number; shape: number };
      return weibullQuantile(random(), row.shape, scaleOf(row));
    }).sort((a, b) => a - b);
    const at = (p: number) => drawn[Math.floor(p * drawn.length)] as number;
    expect(Math.abs((life?.low ?? NaN) - at(0.1))).toBeLessThan(0.3);
    expect(Math.abs((life?.median ?? NaN) - at(0.5))).toBeLessThan(0.3);
    expect(Math.abs((life?.high ?? NaN) - at(0.9))).toBeLessThan(1);
  });
});

describe("LIFE against published lives of floor coverings", () => {
  const machine = LIFE.wool as { machine: { medianYears: number }; tufted: { medianYears: number } };
  const years = (f: (typeof SINGLE)[number][0]) => (LIFE[f] as { medianYears: number }).medianYears;
  it("good machine-made and tufted wool lies in 8 to 15 years, polyamide in 5 to 15 (SafeDeposits Scotland and TDS, February 2021)", () => {
    for (const y of [machine.machine.medianYears, machine.tufted.medianYears]) expect(y >= 8 && y <= 15).toBe(true);
    expect(years("polyamide") >= 5 && years("polyamide") <= 15).toBe(true);
  });
  it("jute, sisal and coir live up to 8 years (the same)", () => expect(years("hard-fibre")).toBeLessThanOrEqual(8));
  it("acrylic falls behind wool (Choubisa, Sinha and Chattopadhyay, IJFTR, Parts I and II)", () => expect(years("acrylic")).toBeLessThan(machine.tufted.medianYears));
});
