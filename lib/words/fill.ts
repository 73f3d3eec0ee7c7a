/** The open places of a message and what fills them. */
export type Fillings = Readonly<Record<string, string | number>>;

/** A message with plain arguments, `{name}`, filled: what the browser and the schemas need, without a reader of MessageFormat. */
export const fill = (text: string, values: Fillings): string => text.replace(/\{(\w+)\}/g, (open, name: string) => String(values[name] ?? open));
