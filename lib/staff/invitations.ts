import "server-only";
import { randomUUID } from "node:crypto";
import * as z from "zod/mini";
import { config } from "../config/config";
import { database, transact, type Staff, type Tx } from "../store/database";
import { hashPassword } from "./auth";
import { ok, refuse, type Caller, type Result, type StaffRole } from "./caller";
import { forbids } from "./deeds";
import { addPerson, checkPerson, personSchema, takenAddress } from "./new-person";
import { hashToken, newToken } from "./one-time-token";
import { noteStaff } from "./staff-audit";

/** ASVS 5.0, 6.5.5: a one-time link lives at most ten minutes. The owner hands it over while the colleague stands by. */
export const INVITATION_MS = 10 * 60_000;
export interface OneTimeLink { link: string; expiresAt: string }
export const invitationUrl = (token: string): string => `${config.baseUrl}/invitation/${token}`;

const SHUT_OUT = "This person is shut out. Let them back in first.";
const DEAD = "This link has been used or is too old. Ask the owner of the workshop for a new one.";

/**
 * A link that makes its reader the first owner; null once there is one. An earlier link that nobody used stops working.
 */
export async function firstOwnerLink(now: Date = new Date()): Promise<string | null> {
  return transact(async (tx) => {
    if (await tx.staff.count({ where: { role: "owner" } })) return null;
    await tx.invitation.deleteMany({ where: { email: null, usedAt: null } });
    return invitationUrl(await addInvitation(tx, { role: "owner", email: null, now }));
  });
}

/**
 * A link for a colleague, good for ten minutes and once. Only the address named can be used with it. Somebody who works
 * here already sets a new password with it; their role stays.
 */
export async function inviteStaff(
  caller: Caller,
  given: { email: string; role: StaffRole },
  now: Date = new Date(),
): Promise<Result<OneTimeLink>> {
  const no = forbids(caller, "manage-staff");
  if (no) return no;
  const parsed = z.strictObject({ email: personSchema.shape.email, role: z.enum(["owner", "reviewer", "trainee"]) }).safeParse(given);
  if (!parsed.success) return refuse("invalid", "Please look at the address again.", { email: parsed.error.issues[0]?.message ?? "" });
  const email = parsed.data.email.toLowerCase();
  return transact(async (tx) => {
    const present = await tx.staff.findUnique({ where: { email }, select: { role: true, disabledAt: true } });
    if (present?.disabledAt) return refuse("invalid", SHUT_OUT, { email: SHUT_OUT });
    const { role } = present ?? parsed.data;
    return handOut(tx, caller, { what: present ? "staff-invited-again" : "staff-invited", role, email, now });
  });
}

/**
 * A link with which somebody who works here sets a new password, made at the machine itself: the way back of an owner who is the
 * only one and forgot theirs. Old sessions end once it is used.
 */
export async function newPasswordLink(caller: Caller, given: string, now: Date = new Date()): Promise<Result<OneTimeLink>> {
  if (caller.kind !== "system") return refuse("not-allowed", "An owner makes this link under People.");
  const email = given.trim().toLowerCase();
  return transact(async (tx) => {
    const present = await tx.staff.findUnique({ where: { email }, select: { role: true, disabledAt: true } });
    if (!present) return refuse("not-found", `Nobody here has the address ${email}.`);
    if (present.disabledAt) return refuse("invalid", SHUT_OUT);
    return handOut(tx, caller, { what: "staff-invited-again", role: present.role, email, now });
  });
}

async function handOut(tx: Tx, caller: Caller, { what, role, email, now }: { what: "staff-invited" | "staff-invited-again"; role: StaffRole; email: string; now: Date }): Promise<Result<OneTimeLink>> {
  const token = await addInvitation(tx, { role, email, now });
  await noteStaff(tx, caller, what, { role });
  return ok({ link: invitationUrl(token), expiresAt: new Date(now.getTime() + INVITATION_MS).toISOString() });
}

/** What the page behind the link shows. Changes nothing, so that a mail scanner opening the link does no harm. */
export async function readInvitation(
  token: string,
  now: Date = new Date(),
): Promise<Result<{ role: StaffRole; email: string | null; first: boolean }>> {
  const row = await database().invitation.findUnique({ where: { tokenHash: hashToken(token) } });
  if (!row || row.usedAt || row.expiresAt <= now) return refuse("expired", DEAD);
  return ok({ role: row.role, email: row.email, first: row.email === null });
}

/** Uses up an invitation and makes the account, or gives it a new password. The person then signs in as anybody does. */
export async function acceptInvitation(
  token: string,
  given: { name: string; email: string; password: string },
  now: Date = new Date(),
): Promise<Result<{ staffId: string; email: string }>> {
  const invitation = await readInvitation(token, now);
  if (!invitation.ok) return invitation;
  const checked = await checkPerson({ ...given, email: invitation.value.email ?? given.email });
  if (!checked.ok) return checked;
  const password = await hashPassword(checked.value.password);
  return transact(async (tx): Promise<Result<{ staffId: string; email: string }>> => {
    const used = await tx.invitation.updateMany({
      where: { tokenHash: hashToken(token), usedAt: null, expiresAt: { gt: now } },
      data: { usedAt: now },
    });
    if (used.count !== 1) return refuse("expired", DEAD);
    if (invitation.value.first && (await tx.staff.count({ where: { role: "owner" } }))) return refuse("expired", DEAD);
    const present = invitation.value.email ? await tx.staff.findUnique({ where: { email: checked.value.email } }) : null;
    if (present?.disabledAt) return refuse("not-allowed", SHUT_OUT);
    return present ? renewPassword(tx, present, password) : addPerson(tx, { ...checked.value, role: invitation.value.role, password });
  }).catch(takenAddress);
}

/** The old password and every session of it are gone at once. */
async function renewPassword(tx: Tx, { id, name, email, role }: Staff, password: string): Promise<Result<{ staffId: string; email: string }>> {
  await tx.staffAccount.updateMany({ where: { userId: id, providerId: "credential" }, data: { password } });
  await tx.staffSession.deleteMany({ where: { userId: id } });
  await noteStaff(tx, { kind: "staff", staffId: id, name, role }, "staff-password-renewed", {});
  return ok({ staffId: id, email });
}

async function addInvitation(tx: Tx, { role, email, now }: { role: StaffRole; email: string | null; now: Date }): Promise<string> {
  const { token, hash } = newToken();
  await tx.invitation.create({
    data: { id: randomUUID(), tokenHash: hash, role, email, createdAt: now, expiresAt: new Date(now.getTime() + INVITATION_MS) },
  });
  return token;
}
