import "server-only";
import { database, transact, type Tx } from "../store/database";
import { ok, refuse, type Caller, type Result, type StaffRole } from "./caller";
import { forbids } from "./deeds";
import { noteStaff } from "./staff-audit";

const NEEDS_OWNER = "The workshop needs at least one owner.";

export interface StaffView {
  id: string;
  name: string;
  email: string;
  role: StaffRole;
  disabled: boolean;
  since: string;
}

export async function listStaff(caller: Caller): Promise<Result<StaffView[]>> {
  const no = forbids(caller, "manage-staff");
  if (no) return no;
  const people = await database().staff.findMany({ orderBy: { createdAt: "asc" } });
  return ok(
    people.map((p) => ({ id: p.id, name: p.name, email: p.email, role: p.role, disabled: p.disabledAt !== null, since: p.createdAt.toISOString() })),
  );
}

export async function setRole(caller: Caller, { staffId, role }: { staffId: string; role: StaffRole }): Promise<Result<null>> {
  return changePerson(caller, staffId, { action: `staff-role-${role}`, loses: role !== "owner" }, (tx) =>
    tx.staff.update({ where: { id: staffId }, data: { role } }),
  );
}

/** Ends all sessions of the person at once; what they wrote stays under their name. */
export async function disableStaff(caller: Caller, staffId: string, now: Date = new Date()): Promise<Result<null>> {
  return changePerson(caller, staffId, { action: "staff-disabled", loses: true }, async (tx) => {
    await tx.staff.update({ where: { id: staffId }, data: { disabledAt: now } });
    await tx.staffSession.deleteMany({ where: { userId: staffId } });
  });
}

export async function restoreStaff(caller: Caller, staffId: string): Promise<Result<null>> {
  return changePerson(caller, staffId, { action: "staff-restored", loses: false }, (tx) =>
    tx.staff.update({ where: { id: staffId }, data: { disabledAt: null } }),
  );
}

async function changePerson(
  caller: Caller,
  staffId: string,
  { action, loses }: { action: string; loses: boolean },
  change: (tx: Tx) => Promise<unknown>,
): Promise<Result<null>> {
  const no = forbids(caller, "manage-staff");
  if (no) return no;
  return transact(async (tx) => {
    if (!(await tx.staff.count({ where: { id: staffId } }))) return refuse("not-found", "There is nobody by that name.");
    const others = await tx.staff.count({ where: { role: "owner", disabledAt: null, id: { not: staffId } } });
    if (loses && others === 0) return refuse("not-allowed", NEEDS_OWNER);
    await change(tx);
    await noteStaff(tx, caller, action, { staffId });
    return ok(null);
  });
}
