/** An address as the parser writes it: in brackets behind the words of a link or in place of a picture, or bare where a link has no words. */
const ADDRESS = /[ \t]?\[(https?:\/\/[^\s\]]+)\]|https?:\/\/[^\s\]]+/gu;
const ATTRIBUTE = /\b(href|src)\s*=\s*(?:"([^"]{1,4000})"|'([^']{1,4000})')/giu;
const TAG = /<[^<>]*>/gu;

const plain = (spelt: string): string => spelt.replaceAll("&amp;", "&").trim();
const hostOf = (address: string): string | null => (URL.canParse(address) ? new URL(address).host.replace(/^www\./u, "") : null);

/** The addresses that HTML leads to, shows pictures from, and has among its words. */
function addressesIn(html: string): { links: ReadonlySet<string>; pictures: ReadonlySet<string>; written: ReadonlySet<string> } {
  const [links, pictures] = [new Set<string>(), new Set<string>()];
  for (const [, name, double, single] of html.matchAll(ATTRIBUTE)) (name?.toLowerCase() === "src" ? pictures : links).add(plain(double ?? single ?? ""));
  return { links, pictures, written: new Set((plain(html.replace(TAG, " ")).match(/https?:\/\/[^\s\]]+/gu) ?? [])) };
}

/** The word that a text ends with. */
const lastWord = (text: string): string => /\S*\s*$/u.exec(text.slice(-500))?.[0] ?? "";

/**
 * The words of a letter that came as HTML, with the long addresses behind them shortened: of a link the place it leads to, once, and of a
 * picture nothing. Whoever needs an address finds it in the message as it came. An address that is not of the HTML, or that
 * stands in the words themselves, stays as it is.
 */
export function withShortLinks(text: string, html: string): string {
  const { links, pictures, written } = addressesIn(html);
  return text.replace(ADDRESS, (whole, behind: string | undefined, at: number) => {
    const address = behind ?? whole;
    if (behind === undefined && written.has(address)) return whole;
    if (pictures.has(address)) return "";
    const host = hostOf(address);
    if (host === null || !links.has(address)) return whole;
    if (behind !== undefined && lastWord(text.slice(Math.max(0, at - 500), at)).includes(host)) return "";
    return `${/^[ \t]/u.test(whole) ? " " : ""}[${host}]`;
  });
}
