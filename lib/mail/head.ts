import { headerText } from "./address";

export interface Named { name: string; address: string }
/** Who wrote to whom about what, as a message says it and mail programs show it. */
export interface Head { from: Named; to: Named; subject: string }

const named = ({ name, address }: Named): Named => ({ name: headerText(name), address: address.trim() });

/** The head of a letter, for the message itself and for whoever looks at it beforehand. An answer goes to `from`: a letter of ours has no Reply-To (RFC 5322, section 3.6.2). */
export const headOf = ({ from, to, subject }: Head): Head => ({ from: named(from), to: named(to), subject: headerText(subject) });
