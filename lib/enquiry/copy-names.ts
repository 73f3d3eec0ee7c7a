import "server-only";
import { fileNameOf } from "../mail/enclosures";
import { longDate } from "../words/measures";
import type { Words } from "../words/words";
import type { WorkshopSettings } from "../workshop/settings";

/** What the files of a copy are called, in a client's words. */
export interface CopyNames {
  readonly readMe: string;
  readonly everything: string;
  letter(at: number): string;
  photo(id: string): string;
  document(id: string): string;
  message(id: string): string;
}

export function copyNames(documents: readonly { id: string; title: string }[], words: Words): CopyNames {
  const { say } = words;
  const named = documentFileNames(documents, words);
  return {
    readMe: `${say("copy.read-me")}.txt`,
    everything: `${say("copy.everything")}.json`,
    letter: (at) => `${say("copy.letters")}/${String(at + 1).padStart(2, "0")}.txt`,
    photo: (id) => `${say("copy.photos")}/${id}.jpg`,
    document: (id) => `${say("copy.documents")}/${named.get(id) ?? `${id}.pdf`}`,
    message: (id) => `${say("copy.messages")}/${id}.eml`,
  };
}

/** What each document is called: its title, with a number where two are called alike. */
function documentFileNames(documents: readonly { id: string; title: string }[], { say }: Words): Map<string, string> {
  const taken = new Map<string, number>();
  return new Map(documents.map(({ id, title }) => {
    const name = fileNameOf(title);
    const n = (taken.get(name) ?? 0) + 1;
    taken.set(name, n);
    return [id, n === 1 ? name : `${say("copy.document-numbered", { name: name.replace(/\.pdf$/, ""), n })}.pdf`];
  }));
}

/** How many of each there are; of what there is none nothing is said. */
export interface Copied { readonly reference: string; readonly letters: number; readonly photos: number; readonly documents: number; readonly messages: number }

/** What lies where in a copy, in a few lines, for whoever opens it. */
export function readMe({ reference, letters, photos, documents, messages }: Copied, { words, workshop, now }: { words: Words; workshop: WorkshopSettings; now: Date }): string {
  const { say } = words;
  const reach = [workshop.email, workshop.telephone, workshop.address].filter((way) => way !== "").join(", ");
  const blocks = [
    say("copy.head", { workshop: workshop.name, reference, day: longDate(now, workshop) }),
    say("copy.file-everything", { file: `${say("copy.everything")}.json` }),
    letters > 0 && say("copy.folder-letters", { folder: say("copy.letters") }),
    photos > 0 && say("copy.folder-photos", { folder: say("copy.photos") }),
    documents > 0 && say("copy.folder-documents", { folder: say("copy.documents") }),
    messages > 0 && say("copy.folder-messages", { folder: say("copy.messages") }),
    reach !== "" && say("copy.ask", { reach }),
  ];
  return `${blocks.filter(Boolean).join("\n\n")}\n`;
}
