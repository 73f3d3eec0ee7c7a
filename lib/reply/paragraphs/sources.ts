import type { Source } from "../../trade/fibres";

/** Our own wording or judgement, with no statement of fact beyond the assessment. */
export const OURS: Source = { how: "elicited", source: "The workshop's own words and judgement; figures come from the assessment" };
export const TRADE: Source = { how: "common practice", source: "Common practice, no published source" };
export const WET_VISCOSE: Source = {
  how: "common practice",
  source: "Common practice, no published source; loss of strength of regenerated cellulose in water: Lenz et al., Colloid and Polymer Science 271 (1993) 460–468",
};
export const WET_LYOCELL: Source = { how: "memory", source: "Lyocell rubbed while wet splits into fibrils, though it keeps most of its strength: textbooks of textile fibres, from memory" };
export const BROWN_LINES: Source = {
  how: "read",
  source: "Hutchins, Water-Stained Cellulosics: A Literature Review, JAIC 22(2) (1983) art. 1",
};
export const MOULD_SOON: Source = { how: "memory", source: "Common practice; that mould starts within two days: EPA and FEMA flood guidance, dry within 24 to 48 hours" };
