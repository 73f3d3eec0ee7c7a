import type { CutKind } from "./cut-down";

/** What each way of cutting is called, on paper and at the desk. */
export const CUT_NAMES: Readonly<Record<CutKind, string>> = {
  "edge-off": "One edge comes off", "equal-ends": "The same strip comes off both ends", "split-in-two": "Two rugs out of one", "smaller-rectangle": "A smaller rectangle", centred: "A smaller rectangle about the middle",
};
