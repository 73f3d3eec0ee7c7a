/** What came out, what is required, and whether it holds; null where it is only reported. */
export interface Outcome { readonly name: string; readonly measured: string; readonly required: string; readonly holds: boolean | null }
/** A file in this folder exports `checks`; each may say how far it is, from 0 to 1. */
export interface LongCheck { readonly name: string; run(progress: (share: number) => void): Promise<readonly Outcome[]> | readonly Outcome[] }
