/**
 * What only an inspection can settle, as sentences. `when`: an answer (`question:answer`) or a mechanism with the chance
 * from which it is said; none: always. Common practice, no published source.
 */
export interface InspectionRow { readonly say: string; readonly when?: { readonly answer?: string; readonly mechanism?: string; readonly from?: number } }
export const ONLY_INSPECTION: readonly InspectionRow[] = [
  { say: "What the pile is made of: words and photos make it likely, a test of a few fibres makes it known." },
  { say: "Whether the colours hold: each one is tested in a hidden corner before anything else." },
  { say: "Whether the back and the foundation are sound." },
  { say: "How far down the urine has gone, and whether the smell would stay.", when: { mechanism: "urine-old", from: 0.2 } },
  { say: "How far down the urine has gone, and whether the smell would stay.", when: { mechanism: "urine-fresh", from: 0.2 } },
  { say: "Whether a hidden corner browns or changes its shine.", when: { mechanism: "browning-cleaning", from: 0.2 } },
  { say: "Whether the pile is only lying wrong or is broken.", when: { mechanism: "pile-distortion", from: 0.2 } },
  { say: "Whether living insects or eggs are in it.", when: { mechanism: "insects", from: 0.2 } },
  { say: "Whether mould has weakened the threads.", when: { mechanism: "mould", from: 0.2 } },
  { say: "Whether the back still holds to the pile.", when: { mechanism: "backing-failure", from: 0.2 } },
  { say: "Whether it can be cut down: where the damage ends, and whether the ground is sound there.", when: { mechanism: "bleaching", from: 0.2 } },
  { say: "How old it is, and what it is worth: a valuer has to hold it.", when: { answer: "age:antique" } },
];
