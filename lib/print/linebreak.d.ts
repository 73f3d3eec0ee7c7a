declare module "linebreak" {
  /** Where a line may end by Unicode Standard Annex 14, one place after the other. */
  export default class LineBreaker {
    constructor(text: string);
    nextBreak(): { readonly position: number; readonly required: boolean } | null;
  }
}
