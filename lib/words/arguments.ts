/**
 * The arguments of a message, read from its text by the type checker, so that a missing or misspelt one is a type error.
 * Understands ICU MessageFormat as the catalogue uses it: `{name}`, `{n, number}`, `{n, plural, …}`, `{x, select, …}` and
 * tags such as `<link>…</link>`. The walk keeps a stack of what it is inside of: text, or an argument's branches.
 */
type Trim<S extends string> = S extends ` ${infer R}` ? Trim<R> : S extends `${infer R} ` ? Trim<R> : S;

/** What an argument may be, by the kind written behind its name. */
type ValueOf<Kind extends string> = Kind extends "number" | "plural" | "selectordinal" ? number : Kind extends "select" ? string : never;

type Inside = readonly ("text" | "branches")[];
type Pop<I extends Inside> = I extends readonly ["text" | "branches", ...infer R extends Inside] ? R : readonly [];

/** An argument begins here: up to the first comma or brace stands its name. */
type Begin<S extends string, I extends Inside, Found> =
  S extends `${infer Head}}${infer Rest}`
    ? Head extends `${infer Name},${infer More}`
      ? More extends `${infer Kind},${infer Branches}`
        ? Walk<`${Branches}}${Rest}`, readonly ["branches", ...I], Found | [Trim<Name>, ValueOf<Trim<Kind>>]>
        : Walk<Rest, I, Found | [Trim<Name>, ValueOf<Trim<More>>]>
      : Walk<Rest, I, Found | [Trim<Head>, string | number]>
    : Found;

type Walk<S extends string, I extends Inside, Found> =
  S extends `${infer Before}{${infer After}`
    ? Before extends `${string}}${infer Closed}`
      ? Walk<`${Closed}{${After}`, Pop<I>, Found>
      : I extends readonly ["branches", ...Inside] ? Walk<After, readonly ["text", ...I], Found> : Begin<After, I, Found>
    : Found;

type Tags<S extends string> = S extends `${string}<${infer Name}>${infer Rest}` ? (Name extends `/${string}` ? never : Name) | Tags<Rest> : never;

type Pairs<S extends string> = Walk<S, readonly ["text"], never>;
/** The values a message takes. */
export type ArgumentsOf<S extends string> = { [P in Pairs<S> as P extends [infer N extends string, unknown] ? N : never]: P extends [string, infer V] ? V : never };
/** The names of the tags a message sets around parts of itself. */
export type TagsOf<S extends string> = Tags<S>;
