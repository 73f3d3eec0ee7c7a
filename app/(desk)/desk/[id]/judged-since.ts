/** Said of a document whose rug was judged anew after it was made, where that makes a difference. */
export const JUDGED_SINCE = "Its rug was judged anew since, and it would say otherwise now.";
