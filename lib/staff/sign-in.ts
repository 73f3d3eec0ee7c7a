import "server-only";
import { isAPIError } from "better-auth/api";
import { parseSetCookieHeader } from "better-auth/cookies";
import { addressHash, keyedHash } from "./address";
import { auth } from "./auth";
import { ok, refuse, type Result } from "./caller";
import { ALLOWANCES, forget, takeOne } from "./rate-limit";
import { noteSecurity } from "./security-log";

/** A cookie for the page to set or, with an empty value, to remove. `maxAge` in seconds; undefined: until the browser closes. */
export interface CookieToSet {
  name: string;
  value: string;
  options: { httpOnly: true; sameSite: "lax"; secure: boolean; path: "/"; maxAge?: number };
}

const WRONG = "That e-mail address and password do not go together.";

/**
 * Checks an address and a password and begins a session. The same words, and about the same time, for an unknown
 * address, a wrong password and a disabled account. Returns the cookies the response must carry.
 */
export async function signIn(
  given: { email: string; password: string },
  headers: Headers,
  now: Date = new Date(),
): Promise<Result<{ cookies: CookieToSet[] }>> {
  const email = typeof given.email === "string" ? given.email.trim().toLowerCase() : "";
  const password = typeof given.password === "string" ? given.password : "";
  const from = addressHash(headers);
  const account = keyedHash(`account:${email}`);
  const accountKey = `sign-in:${account}:${from ?? "unknown"}`;
  const allowed =
    (await takeOne(accountKey, ALLOWANCES.signInAccount, now)) &&
    (from === null || (await takeOne(`sign-in:${from}`, ALLOWANCES.signInAddress, now)));
  const about = { account, from };
  if (!allowed) {
    noteSecurity("too many requests", { what: "sign-in", ...about });
    return refuse("too-many", "Too many attempts from here. Please wait a quarter of an hour.");
  }
  try {
    const { headers: reply } = await auth().api.signInEmail({
      body: { email, password, rememberMe: false },
      headers: withoutCookies(headers),
      returnHeaders: true,
    });
    await forget(accountKey);
    return ok({ cookies: cookiesOf(reply) });
  } catch (error) {
    if (!isAPIError(error)) throw error;
    noteSecurity("sign-in refused", about);
    return refuse("not-signed-in", WRONG);
  }
}

/** Ends the session of a request on the server; the returned cookies remove it from the browser. */
export async function signOut(headers: Headers): Promise<CookieToSet[]> {
  const { headers: reply } = await auth().api.signOut({ headers, returnHeaders: true });
  return cookiesOf(reply);
}

/** A sign-in begins afresh: a session cookie somebody planted before has no say in it. */
function withoutCookies(headers: Headers): Headers {
  const kept = new Headers(headers);
  kept.delete("cookie");
  return kept;
}

function cookiesOf(reply: Headers): CookieToSet[] {
  return reply.getSetCookie().flatMap((line) =>
    [...parseSetCookieHeader(line)].map(([name, c]) => ({
      name,
      value: c.value,
      options: {
        httpOnly: true as const,
        sameSite: "lax" as const,
        secure: Boolean(c.secure),
        path: "/" as const,
        ...(c["max-age"] === undefined ? {} : { maxAge: Number(c["max-age"]) }),
      },
    })),
  );
}
