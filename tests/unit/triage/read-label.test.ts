import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { LABEL_NAMES } from "../../../lib/trade/label-names";
import { classOfLabel, pileOf, sayComponent } from "../../../lib/triage/label-class";
import { labelWords, percentNumber, wordKey } from "../../../lib/triage/label-text";
import { readLabel } from "../../../lib/triage/read-label";
import { readSellerWords } from "../../../lib/triage/seller-reading";

describe("wordKey", () => {
  it("takes away accents and case", () => {
    expect(wordKey("WEŁNA")).toBe(wordKey("welna"));
    expect(wordKey("Flößer")).toBe(wordKey("flosser"));
  });
  it.each([["V1SC0SE", "viscose"], ["VI5COSE", "viscose"], ["W00L", "wool"], ["SlLK", "silk"], ["İPEK", "ipek"]])("reads %s as %s", (seen, meant) => {
    expect(wordKey(seen)).toBe(wordKey(meant));
  });
  it("leaves numbers numbers", () => {
    expect(wordKey("100")).toBe("100");
    expect(wordKey("5m")).toBe("5m");
  });
});

describe("labelWords", () => {
  const seen = (text: string) => labelWords(text).map((w) => [w.gap, w.printed]);
  it("keeps a decimal comma or point, parts per cent signs and digits from letters", () => {
    expect(labelWords("52,5% Seide 47.5 %Viskose").map((w) => w.printed)).toEqual(["52.5", "%", "Seide", "47.5", "%", "Viskose"]);
    expect(labelWords("80WOLLE").map((w) => w.printed)).toEqual(["80", "WOLLE"]);
  });
  it("says what stands between words", () => {
    expect(seen("Pile: wool, silk\njute-back - end")).toEqual([["none", "Pile"], ["colon", "wool"], ["break", "silk"], ["line", "jute"], ["none", "back"], ["break", "end"]]);
  });
  it("reads the digits of other scripts", () => {
    expect(labelWords("۸۰٪ ٢٠٪ १००%").map((w) => w.printed)).toEqual(["80", "%", "20", "%", "100", "%"]);
  });
});

describe("a figure below nothing", () => {
  const sharesOf = (text: string) => readLabel(text).components.flatMap((c) => c.fibres.map((x) => `${x.fibre} ${x.percent ?? "?"}`));
  it("is no share, and is told of", () => {
    expect(sharesOf("-5% wool")).toEqual(["wool ?"]);
    expect(readLabel("-5% wool").doubts.join(" ")).toMatch(/without a figure/);
  });
  it("is a list where the figures make a hundred", () => expect(sharesOf("-80% wool\n-20% viscose")).toEqual(["wool 80", "viscose 20"]));
});

describe("percentNumber", () => {
  it.each([["100", 100], ["1OO", 100], ["l00", 100], ["8O", 80], ["52.5", 52.5], ["0", 0], ["101", null], ["1000", null], ["x", null], ["", null], ["4711", null]])("%s is %s", (word, value) => {
    expect(percentNumber(word)).toBe(value);
  });
});

describe("readLabel", () => {
  it("says where percentages do not make 100, allowing 1 for rounding", () => {
    expect(readLabel("60% wool 41% silk").doubts).toEqual([]);
    expect(readLabel("60% wool 42% silk").doubts).toEqual(["The percentages of the rug add up to 102, not 100."]);
    expect(readLabel("Pile: 60% wool 38% silk").doubts).toEqual(["The percentages of the pile add up to 98, not 100."]);
  });
  it("says where a percentage or a fibre stands alone", () => {
    expect(readLabel("80% wool 20%").doubts).toContain("A percentage of the rug stands without a fibre that could be read.");
    expect(readLabel("80% wool, silk").doubts).toContain("A fibre of the rug stands without its percentage.");
  });
  it("says where a name is a trade word, a plant or general", () => {
    expect(readLabel("100% art silk").doubts).toEqual([expect.stringContaining("A trade word for imitation silk")]);
    expect(readLabel("100% bamboo").doubts).toEqual([expect.stringContaining("Bamboo is a plant")]);
    expect(readLabel("100% other fibres").doubts[0]).toBe("Part of the rug is named only in general terms.");
  });
  it.each(["silk touch", "silk look", "silky", "satin", "Seidenoptik", "aspect soie", "effetto seta", "tacto seda"])("takes %s for no silk, but keeps that it suggests it", (text) => {
    expect(readLabel(text)).toMatchObject({ components: [], doubts: ["No fibre’s name could be read in these words."], suggests: ["silk-look"] });
  });
  it("never takes lyocell, modal, cupro or ramie for viscose", () => {
    for (const name of LABEL_NAMES.filter((n) => ["lyocell", "modal", "cupro", "ramie"].includes(n.meaning))) {
      expect(classOfLabel(readLabel(`100% ${name.name}`))).not.toBe("viscose");
    }
  });
  it("wants a percentage beside short names that are common words elsewhere", () => {
    expect(readLabel("Made in Hallowmere by hand, to be kept in the dry").components).toEqual([]);
    expect(readLabel("100% in").components[0]?.fibres[0]?.fibre).toBe("linen");
    expect(readLabel("le tapis est lin et beau").components).toEqual([]);
  });
  it("reads codes only beside a percentage, and only as printed", () => {
    expect(readLabel("CO, PA and SE").components).toEqual([]);
    expect(readLabel("100% co").components).toEqual([]);
  });
  it("never breaks on any text, and gives only percentages from 0 to 100", () => {
    const pieces = fc.constantFrom("100%", "80 %", "%", "wool", "Seide", "绢", "pile", "Rücken:", "on", "with", ",", "\n", "1OO%", "silk look", "80/20", "٪", "\u0001", "CO");
    fc.assert(fc.property(fc.oneof(fc.string({ unit: "binary" }), fc.array(pieces, { maxLength: 14 }).map((p) => p.join(" "))), (text) => {
      const reading = readLabel(text);
      for (const c of reading.components) {
        expect(c.fibres.length).toBeGreaterThan(0);
        for (const f of c.fibres) expect(f.percent === null || (f.percent >= 0 && f.percent <= 100)).toBe(true);
        expect(sayComponent(c)).not.toContain("null");
      }
      expect(() => classOfLabel(reading)).not.toThrow();
    }), { numRuns: 300 });
  });
  it.each([
    ["1OO% wool", "“1OO” was read as 100"], ["100% W00L", "“W00L” was read as “wool”"], ["100% sllk", "“sllk” was read as “silk”"], ["100% V1SC05E", "“V1SC05E” was read as “viscose”"],
    ["100% polyarnide", "“polyarnide” was read as “polyamide”"], ["100% vvool", "“vvool” was read as “wool”"], ["100% Baurnwolle", "“Baurnwolle” was read as “baumwolle”"],
    ["100% bawelna", "“bawelna” was read as “bawełna”"], ["100% lána", "“lána” was read as"], ["80WOLLE 20SEIDE", "“80WOLLE” was read as “80 WOLLE”"], ["WOOL100%", "“WOOL100” was read as “WOOL 100”"],
    ["100% PURESILK", "“PURESILK” was read as “pure silk”"], ["80 °/o wool 20 °/o silk", "“°/o” was read as %"], ["½ wool ½ silk", "“1/2” was read as 50 %"], ["33 1/3 % wool", "“33 1/3” was read as 33.3 %"],
    ["80 wool 20 silk", "The figures stand without a per cent sign"],
  ])("%s: the correction is a doubt, never silent", (text, doubt) => {
    const reading = readLabel(text);
    expect(reading.doubts.join("\n")).toContain(doubt);
    expect(reading.components[0]?.fibres.length).toBeGreaterThan(0);
  });
  it("says so where a name means one thing here and another there", () => {
    expect(readLabel("麻100%").doubts).toEqual(["“麻” may be linen or hemp; it was taken for linen."]);
    expect(readLabel("100% vlas").components[0]?.fibres).toEqual([{ fibre: "linen", percent: 100 }]);
    expect(readLabel("100% vlas").doubts.join(" ")).toContain("may be linen or pile");
  });
  it("spells out eight corrections and counts the rest", () => {
    const slips = ["W00L", "SlLK", "C0TTON", "VISC0SE", "ACRYL1C", "JUTE", "RAM1E", "LlNEN", "M0DAL", "LY0CELL", "P0LYESTER"].map((n) => `10% ${n}`);
    const { doubts } = readLabel(slips.join(", "));
    expect(doubts.filter((d) => d.includes("look alike"))).toHaveLength(8);
    expect(doubts.join(" ")).toContain("2 more corrections of this kind were made.");
  });
  it("never cuts a silk out of a man-made fibre’s name, and takes nothing apart that could be cut in two ways", () => {
    expect(readLabel("100% Polyesterseide").components.flatMap((c) => c.fibres.map((f) => f.fibre))).not.toContain("silk");
    expect(readLabel(`100% ${"wool".repeat(12)}`).components).toEqual([]);
  });
  it("takes no figure from a range, and marks a rough one", () => {
    const range = readLabel("70-80% wool, 20 – 30 % viscose");
    expect(range.components[0]?.fibres).toEqual([{ fibre: "wool", percent: null }, { fibre: "viscose", percent: null }]);
    expect(range.doubts.join(" ")).toContain("A share is given as a range (70–80 %)");
    expect(readLabel("80-20% wool/silk").doubts.join(" ")).not.toContain("range");
    for (const text of ["min. 80% wool 20% silk", "ca. 80 % wool 20% silk", ">80% wool 20% silk", "CA. 80% WOOL 20% SILK"]) {
      expect(readLabel(text).components[0]?.fibres[0], text).toEqual({ fibre: "wool", percent: 80 });
      expect(readLabel(text).doubts.join(" "), text).toContain("only roughly");
    }
  });
  it("takes no share where 100 % is said of two fibres together", () => {
    for (const text of ["100% wool and silk", "wool & silk 100%"]) {
      expect(readLabel(text).components[0]?.fibres, text).toEqual([{ fibre: "wool", percent: null }, { fibre: "silk", percent: null }]);
      expect(readLabel(text).doubts[0], text).toContain("of several fibres of the rug together");
    }
  });
  it("takes no share where the first name cannot be read and the shares may belong to either side", () => {
    const reading = readLabel("XYZ 60% WO 40%");
    expect(reading.components[0]?.fibres).toEqual([{ fibre: "wool", percent: null }]);
    expect(reading.doubts.join(" ")).toContain("is not clear");
    expect(readLabel("60% WO 40% XYZ").components[0]?.fibres).toEqual([{ fibre: "wool", percent: 60 }]);
    expect(readLabel("60% XYZ 40% WO").components[0]?.fibres).toEqual([{ fibre: "wool", percent: 40 }]);
    expect(readLabel("WO 60% XYZ 40%").components[0]?.fibres).toEqual([{ fibre: "wool", percent: 60 }]);
  });
  it.each(["plant based silk", "sari silk", "viscose silk", "faux silk", "banana silk", "vegan silk", "cactus silk", "synthetic silk", "Kunstseide", "soie végétale"])("never takes %s for silk", (name) => {
    for (const text of [name, `100% ${name}`, `${name.toUpperCase()} 100 %`, `pile: ${name}`]) expect(readLabel(text).components.flatMap((c) => c.fibres.map((f) => f.fibre)), text).toEqual(["art-silk"]);
  });
  it("says what is missing: a percentage, a figure, a fibre", () => {
    expect(readLabel("viscose").doubts).toEqual(["The fibre of the rug stands without a percentage."]);
    expect(readLabel("pure viscose").doubts).toEqual([]);
    expect(readLabel("120 % wool").doubts.join(" ")).toContain("A per cent sign stands without a figure from 0 to 100.");
    expect(readLabel("0 % silk 100 % wool").doubts.join(" ")).toContain("A fibre of the rug is given 0 %.");
    expect(readLabel("Made by hand").doubts).toEqual(["No fibre’s name could be read in these words."]);
    expect(readLabel("  \n ")).toEqual({ components: [], doubts: [], suggests: [], rules: [] });
  });
  it.each([["100% აბრეშუმი", "Georgian"], ["100% մետաքս", "Armenian"], ["100% משי", "Hebrew"], ["100% ผ้าไหม", "Thai"], ["100% ሐር", "Ethiopic"], ["100% ᎠᏍᏓ", "in a script in which"]])("says of %s that the script is not known here", (text, name) => {
    expect(readLabel(text).components).toEqual([]);
    expect(readLabel(text).doubts.join(" ")).toContain(name);
  });
  it("reads wide digits and letters, digits of other scripts, and looks past marks that no eye sees", () => {
    for (const text of ["８０％ ＷＯＯＬ ２０％ ＳＩＬＫ", "\u200f80% wo\u00adol \u202b20% silk\u202c", "80%\u0007wool\u000020% silk", "\ufeff80\u00a0% wool, 20\u2009% silk", "८०% wool ٢٠٪ silk"]) {
      expect(readLabel(text).components, text).toEqual([{ part: "whole", fibres: [{ fibre: "wool", percent: 80 }, { fibre: "silk", percent: 20 }] }]);
    }
  });
  it.each([
    ["100% Wool, cotton warp", "whole wool 100", "ground cotton -"],
    ["100% wool; Cotton warp and weft", "whole wool 100", "ground cotton -"],
    ["wool, cotton foundation", "whole wool -", "ground cotton -"],
    ["80% wool 20% silk, cotton warp", "whole wool 80", "whole silk 20", "ground cotton -"],
    ["50% wool, 50% viscose; 100% cotton backing", "whole wool 50", "whole viscose 50", "ground cotton 100"],
    ["100% silk, silk warp", "whole silk 100", "ground silk -"],
    // One sum, or nothing between them: all of it is the ground's.
    ["60% jute, 40% cotton backing", "ground jute 60", "ground cotton 40"],
    ["wool and cotton warp", "ground wool -", "ground cotton -"],
    ["wool, silk pile", "pile wool -", "pile silk -"],
  ])("gives a ground that stands last what is its own, and the rug the rest: %s", (label, ...parts) =>
    expect(readLabel(label).components.flatMap((c) => c.fibres.map((f) => `${c.part} ${f.fibre} ${f.percent ?? "-"}`))).toEqual(parts));
  it("names no fibre in filling and backing words alone, and gives what follows them to the ground", () => {
    for (const word of ["Backing", "Filling", "Padding", "Füllung", "Rückseite", "Imbottitura"]) {
      expect(readLabel(word).components, word).toEqual([]);
      expect(readLabel(`Pile: 100% wool. ${word}: 100% cotton`).components.map((c) => `${c.part} ${c.fibres[0]?.fibre}`), word).toEqual(["pile wool", "ground cotton"]);
    }
  });
  it("keeps every look apart from its fibre", () => {
    for (const look of ["wool-look", "cotton-look", "linen-look", "jute-look", "sisal-look", "viscose-look"]) {
      expect(readLabel(`${look} 100% polyester`), look).toMatchObject({ components: [{ fibres: [{ fibre: "polyester", percent: 100 }] }], suggests: [look] });
    }
  });
  it("reads a text of 40,000 characters, and says that it is no label", () => {
    const long = `${"This rug was bought at the fair by my aunt. ".repeat(910)} 100% viscose`;
    expect(long.length).toBeGreaterThan(40_000);
    const reading = readLabel(long);
    expect(reading.components).toEqual([{ part: "whole", fibres: [{ fibre: "viscose", percent: 100 }] }]);
    expect(reading.doubts.join(" ")).toContain("far longer than a label");
  });
  it.each(["pile ", "wool with ", "80% wool ", " ", ":", "(", "1 ", "%", "½", "(constitutes ", "wool on cotton back ", "1/2 ", "羊毛80%", "10-20% ", "\n", "WOOLVISCOSE ", "°/o", "pure ", "წ", "W00L "])(
    "takes time in proportion to the length, for %j repeated", (piece) => {
      // Processor time of this process, so that a busy machine does not matter; the least of several goes.
      const least = (times: number) => Math.min(...[1, 2, 3, 4].map(() => {
        const before = process.cpuUsage();
        readLabel(piece.repeat(Math.ceil((2_000 * times) / piece.length)));
        const used = process.cpuUsage(before);
        return used.user + used.system;
      }));
      least(1);
      // Four doublings: 16 when linear, 256 when quadratic; half a millisecond is below what can be told.
      expect(least(16) / (least(1) + 500)).toBeLessThan(64);
    });
  it("reads a label in two languages as one", () => {
    const once = readLabel("80% wool 20% silk");
    expect(readLabel("80% wool 20% silk / 80% laine 20% soie / 80% Wolle 20% Seide")).toEqual(once);
  });
});

describe("classOfLabel", () => {
  it.each([
    ["91% wool 9% silk", "wool"],
    ["90% wool 10% silk", "wool-silk"],
    ["75% polyester 25% wool", "polyester"],
    ["74% polyester 26% wool", "other"],
    ["71% polyester 29% viscose", "other"],
    ["70% polyester 30% viscose", "viscose"],
    ["100% mercerised cotton", "mercerised-cotton"],
    ["100% cashmere", "wool"],
    ["50% wool 50% jute", "wool"],
    ["49% wool 51% jute", "other"],
    ["80% cotton 20% polyester", "cotton"],
    ["60% cotton 40% polyester", "other"],
    ["wool, cotton", "wool"],
    ["100% bamboo", "viscose"],
    ["100% other fibres", null],
    ["", null],
  ])("%s is %s", (text, says) => {
    expect(classOfLabel(readLabel(text))).toBe(says);
  });
});

describe("pileOf", () => {
  it("is the pile where the label says so, whatever else stands on it", () => {
    expect(pileOf(readLabel("Ground: cotton. Pile: silk"))?.fibres).toEqual([{ fibre: "silk", percent: null }]);
  });
  it("leaves out cotton and jute that are only the foundation of the whole, unless they make a class with it", () => {
    expect(pileOf(readLabel("70% wool 30% cotton"))?.fibres.map((f) => f.fibre)).toEqual(["wool"]);
    expect(pileOf(readLabel("70% viscose 30% cotton"))?.fibres.map((f) => f.fibre)).toEqual(["viscose", "cotton"]);
    expect(pileOf(readLabel("100% cotton"))?.fibres.map((f) => f.fibre)).toEqual(["cotton"]);
    expect(pileOf(readLabel("30% cotton 21% jute 49% wool"))?.fibres.map((f) => f.fibre)).toEqual(["cotton", "jute", "wool"]);
  });
  it("is nothing where only the ground is named", () => {
    expect(pileOf(readLabel("Backing: 100% jute"))).toBeNull();
  });
});

describe("readSellerWords", () => {
  it.each([
    ["genuine silk", "silk"], ["pure silk on cotton", "silk"], ["wool & silk", "wool-and-silk"], ["banana silk", "art-silk"], ["Kunstseide", "art-silk"], ["silk touch rug", "silk-look"],
    ["rayon", "viscose"], ["viscose, silk look", "viscose"], ["New Zealand wool", "wool"], ["tappeto di lana", "wool"], ["cotton", "cotton"], ["polypropylene", "other"], ["a bargain", null], ["", null],
  ])("%s is %s", (words, said) => {
    expect(readSellerWords(words)).toBe(said);
  });
});

describe("what stands in brackets", () => {
  const pile = (text: string) => readLabel(text).components.flatMap((c) => c.fibres.map((f) => `${c.part} ${f.fibre} ${f.percent}`));
  it.each([
    ["Pile: 60% New Zealand wool 40% “silk” (viscose)", ["pile wool 60", "pile viscose 40"]],
    ["Seide (Viskose) 100%", ["whole viscose 100"]],
    ["100% soie (rayonne)", ["whole viscose 100"]],
  ])("%s: the bracket says what the silk is, with a doubt", (text, fibres) => {
    expect(pile(text)).toEqual(fibres);
    expect(readLabel(text).doubts.join(" ")).toMatch(/explained in brackets/);
  });
  it.each([
    ["100% silk (hand knotted)", ["whole silk 100"]],
    ["70% silk (30% viscose)", ["whole silk 70", "whole viscose 30"]],
    ["100% wool (viscose)", ["whole wool null", "whole viscose null"]],
  ])("%s: nothing is explained away", (text, fibres) => {
    expect(pile(text)).toEqual(fibres);
    expect(readLabel(text).doubts.join(" ")).not.toMatch(/explained in brackets/);
  });
  it("ten thousand brackets are read as well", () => expect(readLabel("silk (viscose) ".repeat(10_000)).doubts.length).toBeGreaterThan(0));
});

describe("a share of the whole beside its parts", () => {
  it.each(["pile 100% wool; foundation 100% cotton; overall 70% wool 30% cotton", "Flor 100% Wolle, Rücken 100% Baumwolle, gesamt: 70% Wolle 30% Baumwolle"])("%s", (text) => {
    expect(readLabel(text).components).toEqual([
      { part: "pile", fibres: [{ fibre: "wool", percent: 100 }] }, { part: "ground", fibres: [{ fibre: "cotton", percent: 100 }] },
      { part: "whole", fibres: [{ fibre: "wool", percent: 70 }, { fibre: "cotton", percent: 30 }] },
    ]);
  });
});

describe("a heading that is no part that is known", () => {
  it.each([["Runo: 100 % poliester\nPodktad: 100 % poliester", "Podktad"], ["Flor: 80% Wolle, 20% Seide; Gnund: 100% Baumwolle", "Gnund"]])("%s leaves a doubt", (text, word) => {
    expect(readLabel(text).doubts).toContainEqual(expect.stringContaining(`“${word}” may name another part`));
  });
  it.each(["Material: 100% wool", "Pile: wool 80%, silk 20%. Backing: 100% cotton", "Flor: 100 % Wolle\nFarbe: grau", "Runo: wełna: 80%, jedwab: 20%"])("none: %s", (text) => {
    expect(readLabel(text).doubts).toEqual([]);
  });
});
