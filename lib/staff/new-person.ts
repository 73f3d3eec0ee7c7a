import "server-only";
import { randomUUID } from "node:crypto";
import * as z from "zod/mini";
import { isTaken, transact, type Tx } from "../store/database";
import { readSettings } from "../workshop/settings";
import { hashPassword } from "./auth";
import { ok, refuse, type Caller, type Result, type StaffRole } from "./caller";
import { passwordTrouble } from "./password-rules";
import { noteStaff } from "./staff-audit";

export const personSchema = z.object({
  name: z.string().check(z.trim(), z.minLength(1, "Write your name."), z.maxLength(200, "That name is too long for us.")),
  email: z.email("Write an e-mail address like name@example.org.").check(z.maxLength(254, "That address is too long.")),
  password: z.string(),
});
export type NewPerson = z.infer<typeof personSchema>;

/** Checks what a new person wrote about themselves, the password against everything that is theirs. */
export async function checkPerson(given: NewPerson): Promise<Result<NewPerson>> {
  const parsed = personSchema.safeParse({ name: given.name, email: given.email, password: given.password });
  if (!parsed.success) {
    const fields = Object.fromEntries(parsed.error.issues.map((i) => [String(i.path[0]), i.message]));
    return refuse("invalid", "Please look at what you wrote again.", fields);
  }
  const { name } = await readSettings();
  const trouble = passwordTrouble(parsed.data.password, [parsed.data.name, parsed.data.email, name]);
  return trouble ? refuse("invalid", trouble, { password: trouble }) : ok({ ...parsed.data, email: parsed.data.email.toLowerCase() });
}

/** `password` is hashed already. */
export async function addPerson(
  tx: Tx,
  { name, email, role, password }: { name: string; email: string; role: StaffRole; password: string },
): Promise<Result<{ staffId: string; email: string }>> {
  const staffId = randomUUID();
  await tx.staff.create({
    data: { id: staffId, name, email, role, accounts: { create: { id: randomUUID(), accountId: staffId, providerId: "credential", password } } },
  });
  await noteStaff(tx, { kind: "staff", staffId, name, role }, "staff-joined", { role });
  return ok({ staffId, email });
}

export function takenAddress(error: unknown): Result<never> {
  if (isTaken(error)) return refuse("invalid", "Somebody with that address works here already.", { email: "This address is taken." });
  throw error;
}

/** For the demo and the command line: an account without an invitation. */
export async function createStaff(caller: Caller, given: NewPerson & { role: StaffRole }): Promise<Result<{ staffId: string; email: string }>> {
  if (caller.kind !== "system") return refuse("not-allowed", "People join by invitation.");
  const checked = await checkPerson(given);
  if (!checked.ok) return checked;
  const password = await hashPassword(checked.value.password);
  return transact((tx) => addPerson(tx, { ...checked.value, role: given.role, password })).catch(takenAddress);
}
