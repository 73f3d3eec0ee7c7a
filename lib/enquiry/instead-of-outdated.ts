/** What is to be done about a document with a letter that would say otherwise now, inside a sentence. Where its rug has no such document any more, it cannot be made anew. */
export const insteadOf = ({ canMakeAnew }: { canMakeAnew: boolean }): string => `${canMakeAnew ? "make it anew, " : ""}leave it out, or say that it goes as it is`;
