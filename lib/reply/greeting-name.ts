import { inSmallLetters, isOrderOpen, nameInCapitals } from "./name-order";
import { plain } from "./rug-title";

/** Addresses of mail and of pages, with what is put around them. */
const ADDRESSES = /[<(]?(?:\S*@\S*|\S+:\/\/\S*|\bwww\.\S*)[>)]?/gu;
/** From a word with a digit on it is a house, a postcode or a telephone number. */
const FROM_A_NUMBER = /(?:^|[\s,;]+)\S*\d.*$/u;
/** Where somebody lives, after a first and a last name: “… of Upper Barn”. A firm that begins with “The” keeps its own. */
const OF_A_PLACE = /^(?!The )(\S+ \S.*?) of \p{Lu}.*$/u;
/** A name with this many commas is an address. Elicited: “Example, Ana” has one. */
const COMMAS_OF_AN_ADDRESS = 2;

/** One number of four digits at most between words without any: “54”, “1st”, “4U”. Longer ones, and several, are telephones and postcodes. Elicited. */
const ONE_NUMBER = /^(?<before>(?:[^\s\d]+\s)*)(?<number>\d{1,4}\p{L}{0,2})(?<after>(?:\s[^\s\d]+)*)$/u;
/** The number within a word of three letters or more, which no house has: “Studio54”, “Rugs4You”. Elicited. */
const IN_A_WORD = /^(?:[^\s\d]+\s)*(?=(?:\d*\p{L}){3})\p{L}*\d{1,4}\p{L}*(?:\s[^\s\d]+)*$/u;
/** What makes a firm's name of words. Elicited. */
const OF_A_FIRM = /\b(?:antiques?|bars?|caf[eé]|carpets?|cleaners?|cleaning|co|company|designs?|floors?|flooring|gallery|galleries|gmbh|hotel|inc|interiors?|limited|llc|ltd|partners|plc|restaurant|restoration|rugs?|services|shop|store|studios?|textiles|trading)\b/iu;
/** What a house's number stands before, in English. Elicited. */
const STREET_AFTER = /\b(?:alley|ave|avenue|blvd|boulevard|close|cottages?|court|crescent|croft|drive|gardens?|gate|green|grove|hill|house|lane|mews|parade|park|place|quay|rd|road|row|square|st|street|terrace|villas?|walk|way|wharf|yard)\b\.?$/iu;
/** What it stands behind: parts of houses, and streets where the number comes last. Elicited. */
const PART_OF_A_HOUSE = /(?:^|[\s,;]+)(?:apartment|apt|block|flat|floor|no|number|room|suite|unit)\.?$/iu;
const STREET_BEFORE = /(?:stra(?:ß|ss)e|str\.|gasse|platz|weg)$/iu;

/** Whether the number in a line belongs to a name: “Studio 54”, “Warp 7”, “Rugs 4 You Ltd”. Of a person's name, and of an address, it does not. */
function isNumberOfName(line: string): boolean {
  if (IN_A_WORD.test(line)) return true;
  const { before = "", after = "" } = ONE_NUMBER.exec(line)?.groups ?? {};
  const words = `${before}${after}`.trim();
  if (words === "" || STREET_AFTER.test(after) || STREET_BEFORE.test(before.trim())) return false;
  if (PART_OF_A_HOUSE.test(before.trim())) return OF_A_FIRM.test(after);
  const isOneWord = after === "" && !before.trim().includes(" ");
  return isOneWord || OF_A_FIRM.test(words);
}

/** A line without what follows from a number that is none of the name's. */
function withoutNumbers(line: string): string {
  const [first = "", ...rest] = line.split(/(?=[,;])/u);
  if (isNumberOfName(first.trim())) return `${first}${rest.join("").replace(FROM_A_NUMBER, "")}`;
  const cut = line.replace(FROM_A_NUMBER, "");
  return cut === line ? line : cut.replace(PART_OF_A_HOUSE, "");
}

/** Titles that stand before a last name. Of “Sir” and such the first name is said, so they are none of these. */
const TITLED = /^(?<title>(?:Mr|Mrs|Ms|Miss|Mx|Dr|Prof|Professor)\.?) (?<names>.+)$/iu;
/** Last names of several words begin with a small one: “van der Berg”. */
const WITH_PARTICLE = /^\p{Ll}[\p{L}’']* /u;
const isInitial = (word: string): boolean => /^(?:[\p{Lu}\p{Ll}]\.?)(?:[\p{Lu}]\.)*$/u.test(word);

/** Somebody else stands beside it, or it is more than one name. */
const WITH_OTHERS = /[,&+/]| (?:and|or) /iu;
/** What stands behind a name after a comma and is no first name. Elicited. */
const AFTER_A_NAME = /^(?:b\.?a|b\.?sc|c\.?b\.?e|esq|jnr|jr|junior|m\.?a|m\.?b\.?e|m\.?d|m\.?sc|o\.?b\.?e|ph\.?d|r\.?n|senior|snr|sr|i{2,3}|iv)\.?$/iu;
const LAST_THEN_FIRST = /^(?<last>(?:\p{Ll}[\p{L}’']* )*[^\s,]+), *(?<first>[^,]+)$/u;

/** “Ana Example” of “Example, Ana”: the comma says which is which. Two words before it may be a name and a place, and stay. */
function inSpokenOrder(name: string): string {
  const { last, first } = LAST_THEN_FIRST.exec(name)?.groups ?? {};
  return last && first && !WITH_OTHERS.test(` ${first}`) && !AFTER_A_NAME.test(first) && !OF_A_FIRM.test(name) ? `${first} ${last}` : name;
}

/**
 * “Mrs Farrant” of “Mrs Edith Farrant”, as letters in English greet (common practice). Where more than one word may be the last
 * name, as where some write it first, or somebody else stands beside it, the name is left whole. A last name in capitals is known.
 */
function withoutFirstName(name: string): string {
  const { title, names } = TITLED.exec(name)?.groups ?? {};
  if (!title || !names || WITH_OTHERS.test(` ${names}`)) return name;
  const words = names.split(" ");
  const capitals = nameInCapitals(words);
  if (capitals) return `${title} ${inSmallLetters(capitals)}`;
  if (isOrderOpen(words)) return name;
  const past = words.findIndex((w) => !isInitial(w));
  const last = words.slice(past > 0 ? past : 1).join(" ");
  return last !== "" && (!last.includes(" ") || WITH_PARTICLE.test(last)) ? `${title} ${last}` : name;
}

/** A last name in capitals as it is written among friends; of a firm they stay. */
function withoutCapitals(name: string): string {
  const words = name.split(" ");
  const capitals = name.includes(",") || OF_A_FIRM.test(name) ? null : nameInCapitals(words);
  return capitals ? words.map((w) => (w === capitals ? inSmallLetters(w) : w)).join(" ") : name;
}

/** Initials alone greet nobody. In scripts without capitals one sign can be a name. */
const isInitialsAlone = (name: string): boolean => name.split(" ").every(isInitial);

/** What a mailbox of an office is called, where no person's name came with it (the first of them: RFC 2142). Elicited. */
const ROLE = /^(?:info|information|marketing|sales|support|postmaster|webmaster|accounts|admin|administration|bookings?|contact|enquir(?:y|ies)|hello|help|inquir(?:y|ies)|kontakt|mail|no-?reply|office|orders?|post|reception|service|services|team)$/iu;

/** How a client is greeted: the name they gave without any address that stands in it, in one line; null where nothing is left to greet by. */
export function greetingName(name: string): string | null {
  const line = plain(name.split(/[\r\n]/u).find((l) => plain(l) !== "")?.replace(ADDRESSES, " ") ?? "");
  const parts = withoutNumbers(line).split(",");
  const whose = (parts.length > COMMAS_OF_AN_ADDRESS ? (parts[0] ?? "") : parts.join(",")).replace(OF_A_PLACE, "$1").replace(/[\s,;]+$/u, "");
  return /\p{L}/u.test(whose) && !isInitialsAlone(whose) && !ROLE.test(whose) ? withoutCapitals(withoutFirstName(inSpokenOrder(whose))) : null;
}
