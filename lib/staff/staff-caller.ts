import "server-only";
import { isAPIError } from "better-auth/api";
import { database } from "../store/database";
import { auth, SESSION_MS, STAFF_COOKIE } from "./auth";
import type { Caller } from "./caller";

/** Who the session cookie of a request stands for; null when nobody is signed in. Moves the idle time on. */
export async function staffCaller(headers: Headers, now: Date = new Date()): Promise<(Caller & { kind: "staff" }) | null> {
  if (!headers.get("cookie")?.includes(STAFF_COOKIE)) return null;
  const found = await auth()
    .api.getSession({ headers, query: { disableCookieCache: true, disableRefresh: true } })
    .catch((error: unknown) => {
      if (isAPIError(error) && error.statusCode < 500) return null;
      throw error;
    });
  if (!found) return null;
  const { session } = found;
  if (session.expiresAt <= now || session.createdAt.getTime() + SESSION_MS.absolute <= now.getTime()) return null;
  const person = await database().staff.findUnique({ where: { id: session.userId }, select: { id: true, name: true, role: true, disabledAt: true } });
  if (!person || person.disabledAt) return null;
  await keepAwake(session, now);
  return { kind: "staff", staffId: person.id, name: person.name, role: person.role };
}

/** Writes at most once a minute, and never brings back a session that was ended meanwhile. */
async function keepAwake(session: { id: string; createdAt: Date; expiresAt: Date }, now: Date): Promise<void> {
  const until = new Date(Math.min(now.getTime() + SESSION_MS.idle, session.createdAt.getTime() + SESSION_MS.absolute));
  if (until.getTime() - session.expiresAt.getTime() < 60_000) return;
  await database().staffSession.updateMany({ where: { id: session.id, expiresAt: { gt: now } }, data: { expiresAt: until } });
}
