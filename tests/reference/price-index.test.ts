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
  // European Central Bank, euro foreign exchange reference rates, annual averages, from memory: units a euro. The table comes to them by way of the pound and the US dollar.
  it.each([
    [2023, "AUD", 1.6288], [2023, "CAD", 1.4595], [2023, "NZD", 1.7622], [2024, "AUD", 1.6397], [2024, "CAD", 1.4821], [2024, "NZD", 1.788],
  ] as const)("has the euro of %d in %s at %d, within half a per cent", (year, currency, aEuro) => {
    const ours = (poundsOf2024(1, "EUR", year) as number) / (poundsOf2024(1, currency, year) as number);
    expect(Math.abs(ours / aEuro - 1)).toBeLessThan(0.005);
  });
});
