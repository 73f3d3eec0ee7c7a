import "server-only";
import { revalidatePath } from "next/cache";
import type * as z from "zod/mini";
import { staffCallerOrNull } from "@/app/_server/caller";
import { refuse, type Caller, type Result } from "@/lib/enquiry/caller";

export const SIGNED_OUT = "You are signed out. Sign in again in another window, then try once more: what you wrote is still here.";

/**
 * One server action of the desk: parse, find out who asks, run one operation, give its result back. A signed-out
 * person is told so instead of being led away, because being led away would lose what they typed.
 */
export async function asStaff<I, T>(schema: z.ZodMiniType<I>, input: unknown, operation: (caller: Caller, input: I) => Promise<Result<T>>): Promise<Result<T>> {
  const parsed = schema.safeParse(input);
  if (!parsed.success) return refuse("invalid", parsed.error.issues[0]?.message ?? "That could not be read.");
  const caller = await staffCallerOrNull();
  if (!caller) return refuse("not-signed-in", SIGNED_OUT);
  const result = await operation(caller, parsed.data);
  if (result.ok) revalidatePath("/desk", "layout");
  return result;
}
