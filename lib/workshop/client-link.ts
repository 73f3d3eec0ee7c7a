import "server-only";
import { createHmac } from "node:crypto";
import { config } from "../config/config";

/**
 * A client's way in. The token is made from the link's id and the server's secret (HMAC-SHA-256, 256 bits), so that it can be
 * written into a letter at the moment it goes out and never lies in the database: the row keeps its hash, a stored letter a mark.
 */
export const clientToken = (linkId: string): string => createHmac("sha256", config.authSecret).update(`client-link:${linkId}`).digest("base64url");
export const clientUrl = (linkId: string): string => `${config.baseUrl}/e/${clientToken(linkId)}`;

const MARK = /\[\[client-link:([0-9a-f-]{36})\]\]/g;
/** What stands in a stored letter in place of the link. */
export const linkMark = (linkId: string): string => `[[client-link:${linkId}]]`;
/** The letter as it goes out. Call it on the text and on the HTML, when sending, and to know a letter again in an answer; what it gives is never kept. */
export const withLinks = (text: string): string => text.replace(MARK, (_, linkId: string) => clientUrl(linkId));
/** The letter as it may be read on a page. */
export const withoutLinks = (text: string): string => text.replace(MARK, "(the link to your own page stands in the letter itself)");
