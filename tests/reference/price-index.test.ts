import { describe, expect, it } from "vitest";
import { PRICE_INDEX, poundsOf2024 } from "../../lib/trade/price-index";

const of = (year: number) => PRICE_INDEX.find((r) => r.year === year) as (typeof PRICE_INDEX)[number];

describe("the price index beside what was published", () => {
  // Office for National Statistics, Consumer price inflation, UK: March 2022 and December 2022. CPIH rose 6.2 % in the twelve
  // months to March 2022 and 9.2 % in those to December; the mean of the year lies between.
  it("rises from 2021 to 2022 by more than to March and less than to December 2022", () => {
    const rise = of(2022).cpi / of(2021).cpi - 1;
    expect(rise).toBeGreaterThan(0.062);
    expect(rise).toBeLessThan(0.092);
    expect((poundsOf2024(100, "GBP", 2021) as number) / (poundsOf2024(100, "GBP", 2022) as number)).toBeCloseTo(1 + rise, 12);
  });
  // Eurostat, Exchange rates and interest rates: the euro appreciated 2.4 % against sterling from 2013 to 2023.
  it("has the euro 2.4 per cent dearer in pounds in 2023 than in 2013", () => {
    expect(of(2023).gbpPerEur / of(2013).gbpPerEur - 1).toBeCloseTo(0.024, 3);
  });
});
