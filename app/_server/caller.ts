import "server-only";
import { cookies, headers } from "next/headers";
import { redirect } from "next/navigation";
import { config } from "@/lib/config/config";
import { ok, type Caller, type Result } from "@/lib/enquiry/caller";
import { callerFromLink, LINK_DAYS } from "@/lib/enquiry/open-client-link";
import { callerFromIntake, INTAKE_DAYS, openIntake } from "@/lib/enquiry/open-intake";
import { addressHash } from "@/lib/staff/address";
import type { CookieToSet } from "@/lib/staff/sign-in";
import { staffCaller } from "@/lib/staff/staff-caller";

/** Who asks, read from the cookies of the request. What they may do is decided in lib/enquiry, never here. */

const isHttps = config.baseUrl.startsWith("https:");
/** A `__Host-` cookie belongs to this host alone; browsers take one over HTTPS only. */
const PREFIX = isHttps ? "__Host-" : "";
export const INTAKE_COOKIE = `${PREFIX}pp-intake`;
export const CLIENT_COOKIE = `${PREFIX}pp-client`;
const DAY_S = 86_400;

export const cookieOptions = (days: number) => ({ httpOnly: true, sameSite: "lax", secure: isHttps, path: "/", maxAge: days * DAY_S }) as const;

const addressOfRequest = async () => addressHash(new Headers(await headers()));

/** The questionnaire on this device; null where there is none, or it is too old. */
export async function intakeCaller(): Promise<(Caller & { kind: "intake" }) | null> {
  return callerFromIntake((await cookies()).get(INTAKE_COOKIE)?.value, await addressOfRequest(), new Date());
}

/** As above; begins one where there is none. For server actions and routes: it sets a cookie. */
export async function intakeCallerOrOpen(): Promise<Result<Caller & { kind: "intake" }>> {
  const known = await intakeCaller();
  if (known) return ok(known);
  const from = await addressOfRequest();
  const opened = await openIntake({ kind: "public", addressHash: from }, new Date());
  if (!opened.ok) return opened;
  await rememberIntake(opened.value.token);
  return ok({ kind: "intake", intakeId: opened.value.intakeId, addressHash: from });
}

export async function rememberIntake(token: string): Promise<void> {
  (await cookies()).set(INTAKE_COOKIE, token, cookieOptions(INTAKE_DAYS));
}

export async function forgetIntake(): Promise<void> {
  (await cookies()).set(INTAKE_COOKIE, "", cookieOptions(0));
}

/** The client whose link was opened on this device; null where none was, or it no longer opens anything. */
export async function clientCaller(): Promise<(Caller & { kind: "client" }) | null> {
  return callerFromLink((await cookies()).get(CLIENT_COOKIE)?.value, new Date());
}

export async function rememberClient(token: string): Promise<void> {
  (await cookies()).set(CLIENT_COOKIE, token, cookieOptions(LINK_DAYS));
}

export async function forgetClient(): Promise<void> {
  (await cookies()).set(CLIENT_COOKIE, "", cookieOptions(0));
}

export async function staffCallerOrNull(): Promise<(Caller & { kind: "staff" }) | null> {
  return staffCaller(new Headers(await headers()));
}

/** For pages of the desk. */
export async function staffCallerOrRedirect(): Promise<Caller & { kind: "staff" }> {
  return (await staffCallerOrNull()) ?? redirect("/sign-in");
}

/** Everybody this request could be, strongest first: a picture is shown to whichever of them may see it. */
export async function callersOfRequest(): Promise<Caller[]> {
  const all = await Promise.all([staffCallerOrNull(), clientCaller(), intakeCaller()]);
  return all.filter((c) => c !== null);
}

/** Sets what signing in or out asks for. */
export async function setCookies(toSet: readonly CookieToSet[]): Promise<void> {
  const jar = await cookies();
  for (const { name, value, options } of toSet) jar.set(name, value, options);
}
