export { ok, refuse, STATUS_OF } from "../staff/caller";
export type { Caller, Refusal, RefusalCode, Result, StaffRole } from "../staff/caller";
