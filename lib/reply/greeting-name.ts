import { plain } from "./rug-title";

/** Addresses of mail and of pages, with what is put around them. */
const ADDRESSES = /[<(]?(?:\S*@\S*|\S+:\/\/\S*|\bwww\.\S*)[>)]?/gu;
/** From a word with a digit on it is a house, a postcode or a telephone number. */
const FROM_A_NUMBER = /(?:^|[\s,;]+)\S*\d.*$/u;
/** Where somebody lives, after a first and a last name: “… of Upper Barn”. A firm that begins with “The” keeps its own. */
const OF_A_PLACE = /^(?!The )(\S+ \S.*?) of \p{Lu}.*$/u;
/** A name with this many commas is an address. Elicited: “Example, Ana” has one. */
const COMMAS_OF_AN_ADDRESS = 2;

/** How a client is greeted: the name they gave without any address that stands in it, in one line; null where nothing is left to greet by. */
export function greetingName(name: string): string | null {
  const line = plain(name.split(/[\r\n]/u).find((l) => plain(l) !== "")?.replace(ADDRESSES, " ") ?? "");
  const parts = line.replace(FROM_A_NUMBER, "").split(",");
  const whose = (parts.length > COMMAS_OF_AN_ADDRESS ? (parts[0] ?? "") : parts.join(",")).replace(OF_A_PLACE, "$1").replace(/[\s,;]+$/u, "");
  return /\p{L}/u.test(whose) ? whose : null;
}
