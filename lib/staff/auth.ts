import "server-only";
import { hash, verify } from "@node-rs/argon2";
import { betterAuth } from "better-auth";
import { prismaAdapter } from "better-auth/adapters/prisma";
import { config } from "../config/config";
import { database } from "../store/database";
import { PASSWORD_LIMITS } from "./password-rules";

/**
 * How long a sign-in lasts. Idle time: the upper end of what OWASP's Session Management Cheat Sheet gives for low risk
 * (15 to 30 minutes). Absolute: one working day, so that everybody signs in once each morning. Elicited within those bounds.
 */
export const SESSION_MS = { idle: 30 * 60_000, absolute: 12 * 60 * 60_000 } as const;

/** Argon2id with the parameters of OWASP's Password Storage Cheat Sheet: 19 MiB, two passes, one lane. */
const ARGON2 = { algorithm: 2, memoryCost: 19_456, timeCost: 2, parallelism: 1 } as const;
export const hashPassword = (password: string): Promise<string> => hash(password, ARGON2);

const isHttps = config.baseUrl.startsWith("https:");
/** A `__Host-` cookie belongs to this host alone; browsers take one over HTTPS only. */
export const STAFF_COOKIE = isHttps ? "__Host-pp-staff" : "pp-staff";

function makeAuth() {
  return betterAuth({
    appName: "Plainpile",
    baseURL: config.baseUrl,
    secret: config.authSecret,
    database: prismaAdapter(database(), { provider: config.provider, transaction: false }),
    user: {
      modelName: "staff",
      additionalFields: {
        role: { type: "string", input: false, required: true },
        disabledAt: { type: "date", input: false, required: false },
      },
    },
    session: { modelName: "staffSession", expiresIn: SESSION_MS.idle / 1000, disableSessionRefresh: true },
    account: { modelName: "staffAccount" },
    verification: { modelName: "staffVerification" },
    emailAndPassword: {
      enabled: true,
      disableSignUp: true,
      minPasswordLength: PASSWORD_LIMITS.minChars,
      maxPasswordLength: PASSWORD_LIMITS.maxChars,
      password: { hash: hashPassword, verify: ({ hash: stored, password }) => verify(stored, password) },
    },
    databaseHooks: {
      session: {
        create: {
          // Somebody who no longer works here gets no session, whatever they know.
          before: async (session) => {
            const person = await database().staff.findUnique({ where: { id: session.userId }, select: { disabledAt: true } });
            if (person?.disabledAt !== null) return false;
            // better-auth gives a session that ends with the browser a whole day; ours is idle sooner.
            return { data: { expiresAt: new Date(session.createdAt.getTime() + SESSION_MS.idle) } };
          },
        },
      },
    },
    // Sign-in is limited by lib/staff/rate-limit: better-auth's own limiter guards its HTTP routes only, and none is open.
    rateLimit: { enabled: false },
    advanced: {
      useSecureCookies: false,
      database: { generateId: () => crypto.randomUUID() },
      cookies: {
        session_token: { name: STAFF_COOKIE, attributes: { httpOnly: true, sameSite: "lax", secure: isHttps, path: "/" } },
        dont_remember: { name: `${STAFF_COOKIE}-short`, attributes: { httpOnly: true, sameSite: "lax", secure: isHttps, path: "/" } },
      },
    },
    logger: { disabled: true },
    telemetry: { enabled: false },
  });
}

const kept = globalThis as { plainpileAuth?: ReturnType<typeof makeAuth> };
/** Made on first use, since it takes the database's client and the server's secret. */
export const auth = (): ReturnType<typeof makeAuth> => (kept.plainpileAuth ??= makeAuth());
