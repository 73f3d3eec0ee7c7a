/** A text with its first letter large, as a sentence or an entry of a table begins. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
