import { describe, expect, it } from "vitest";
import type { SingleFibre } from "../../lib/trade/single-fibres";
import { flatPosterior, topOf } from "./bench-helpers";

/** Along the fibre and across it, as two published tables give them (read). Polyester, nylon and polypropylene share one row there. */
const MELT_SPUN: readonly SingleFibre[] = ["polyester", "polyamide", "polypropylene"];
const VIEWS: readonly (readonly [source: string, fibre: SingleFibre, alike: readonly SingleFibre[], surface: string, section: string])[] = [
  ["best-filter.com", "cotton", ["cotton"], "convolutions", "kidney"],
  ["best-filter.com", "wool", ["wool"], "scales", "round"],
  ["best-filter.com", "silk", ["silk"], "smooth", "triangular"],
  ["best-filter.com", "bast", ["bast", "hard-fibre"], "nodes", "polygon"],
  ["best-filter.com", "polyester", [...MELT_SPUN, "mercerised-cotton", "lyocell"], "smooth", "round"],
  ["best-filter.com", "acrylic", ["acrylic"], "smooth", "dog-bone"],
  ["best-filter.com", "acetate", ["acetate", "viscose"], "striations", "lobed"],
  ["best-filter.com", "viscose", ["viscose"], "striations", "serrated"],
  ["baiketextile.com", "silk", ["silk"], "striations", "triangular"],
  ["baiketextile.com", "hard-fibre", ["hard-fibre", "bast"], "nodes", "polygon"],
  ["baiketextile.com", "lyocell", ["lyocell"], "smooth", "serrated"],
  ["textileschool.com", "mercerised-cotton", ["mercerised-cotton", ...MELT_SPUN, "lyocell"], "smooth", "round"],
  ["textiletrick.com", "hard-fibre", ["hard-fibre"], "bundles", "polygon"],
];

describe("published views under the microscope", () => {
  it.each(VIEWS)("%s: %s, or what its table gives the same views, comes first", (_, fibre, alike, surface, section) => {
    const p = flatPosterior(["microscopy", { surface, section }]);
    expect(alike).toContain(topOf(p));
    expect(p[fibre]).toBeGreaterThan(0.1);
  });

  it("scales are wool", () => {
    const p = flatPosterior(["microscopy", { surface: "scales" }]);
    expect(topOf(p)).toBe("wool");
    expect(p.wool).toBeGreaterThan(0.85);
  });
});
