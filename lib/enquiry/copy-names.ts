import "server-only";
import { fileNameOf } from "../mail/enclosures";

/** What each document is called in a copy: its title, with a number where two are called alike. */
export function documentFileNames(documents: readonly { id: string; title: string }[]): Map<string, string> {
  const taken = new Map<string, number>();
  return new Map(documents.map(({ id, title }) => {
    const name = fileNameOf(title);
    const before = taken.get(name) ?? 0;
    taken.set(name, before + 1);
    return [id, `documents/${before === 0 ? name : name.replace(/\.pdf$/, ` ${before + 1}.pdf`)}`];
  }));
}
