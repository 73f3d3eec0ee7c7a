/** The copy of everything that is kept: what its files are called, and what stands in them beside what was told. */
export const COPY = {
  "copy.read-me": "read me first",
  "copy.everything": "everything",
  "copy.letters": "letters",
  "copy.photos": "photos",
  "copy.documents": "documents",
  "copy.messages": "messages",
  "copy.you": "you",
  "copy.workshop": "the workshop",
  "copy.document-numbered": "{name} {n}",
  "copy.head": "A copy of everything that {workshop} keeps about your enquiry {reference}, made on {day}.",
  "copy.file-everything": "{file}: what you told us, what was found and what was done, in a form that other programs can read too (JSON). What was found stands there in figures; what it means, our letters say. The names of its fields are English in every language; times are in UTC.",
  "copy.folder-letters": "{folder}: the letters that we sent, as they were sent. Links to your own page are left out: they are for you alone.",
  "copy.folder-photos": "{folder}: the photos, as we keep them.",
  "copy.folder-documents": "{folder}: printed documents that went with our letters.",
  "copy.folder-messages": "{folder}: what came from you by e-mail, as it came. A mail program opens it.",
  "copy.ask": "If something is wrong or missing, tell us: {reach}.",
} as const;
