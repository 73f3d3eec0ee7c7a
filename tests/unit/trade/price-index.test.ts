import { describe, expect, it } from "vitest";
import { PRICE_INDEX, exchanged, fromPoundsOf2024, poundsOf2024 } from "../../../lib/trade/price-index";
import { CURRENCIES } from "../../../lib/trade/questions";
import { BACK } from "../../../lib/trade/likelihoods-make";
import { PRICES, priceRow, type Make } from "../../../lib/trade/prices";

describe("poundsOf2024", () => {
  it("leaves a price of 2024 in pounds alone", () => {
    expect(poundsOf2024(250, "GBP", 2024)).toBe(250);
  });
  // ONS CPIH, 2015 = 100: annual averages 79.4 (2005), 120.5 (2022) and 132.9 (2024), from memory.
  it.each([[2005, 132.9 / 79.4], [2022, 132.9 / 120.5]])("carries a pound of %d by UK consumer prices", (year, factor) => {
    expect(poundsOf2024(1, "GBP", year)).toBeCloseTo(factor, 1);
    expect(Math.abs((poundsOf2024(1, "GBP", year) as number) / factor - 1)).toBeLessThan(0.02);
  });
  // European Central Bank annual reference rates from memory: 2024 .8466, 2015 .7258 pounds a euro; 2024 1.0824 dollars a euro.
  it("exchanges at the year's mean rate", () => {
    expect(poundsOf2024(100, "EUR", 2024) as number).toBeCloseTo(84.66, 1);
    expect(poundsOf2024(100, "USD", 2024) as number).toBeCloseTo(100 / 1.2781, 1);
  });
  it("knows the table's first year, not the one before; years after its last count as the last", () => {
    expect(poundsOf2024(1, "EUR", 2000)).toBeGreaterThan(0.6);
    expect(poundsOf2024(1, "EUR", 1999)).toBeNull();
    expect(poundsOf2024(1, "EUR", 3020)).toBe(poundsOf2024(1, "EUR", 2025));
    expect(poundsOf2024(1, "EUR", Number.NaN)).toBeNull();
  });
});

describe("fromPoundsOf2024", () => {
  it.each(CURRENCIES)("undoes poundsOf2024 of the last year, in %s", (currency) => {
    expect(poundsOf2024(fromPoundsOf2024(180, currency), currency, 2025)).toBeCloseTo(180, 9);
  });
});

describe("exchanged", () => {
  it.each(CURRENCIES)("gives back what was exchanged, by way of %s", (currency) => {
    expect(exchanged(exchanged(240, "EUR", currency), currency, "EUR")).toBeCloseTo(240, 9);
    expect(exchanged(240, currency, currency)).toBe(240);
  });
});

describe("PRICE_INDEX", () => {
  it("has every year from 2000 to 2025 with plausible rates", () => {
    expect(PRICE_INDEX.map((r) => r.year)).toEqual(Array.from({ length: 26 }, (_, i) => 2000 + i));
    for (const r of PRICE_INDEX) {
      expect(r.gbpPerEur).toBeGreaterThan(0.55);
      expect(r.gbpPerEur).toBeLessThan(0.95);
      expect(r.usdPerGbp).toBeGreaterThan(1.1);
      expect(r.usdPerGbp).toBeLessThan(2.1);
      for (const dollars of [r.audPerUsd, r.cadPerUsd, r.nzdPerUsd]) {
        expect(dollars).toBeGreaterThan(0.9);
        expect(dollars).toBeLessThan(2.5);
      }
    }
  });
});

describe("priceRow", () => {
  it("has a row for each class whatever the construction, and its own where there is one", () => {
    for (const { fibre } of PRICES) expect(priceRow(fibre, "felt").make).toBeNull();
    expect(priceRow("viscose", "knots").median).toBe(450);
    expect(priceRow("viscose", "cloth").median).toBe(180);
  });
  it("uses every row of the table for some construction", () => {
    for (const row of PRICES) expect(BACK.answers.map((make) => priceRow(row.fibre, make as Make))).toContain(row);
  });
});
