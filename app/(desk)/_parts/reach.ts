import { refuse, type Result } from "@/lib/enquiry/caller";

/** Runs a server action; a server that cannot be reached is an answer like any other, so that nothing typed is thrown away. */
export async function reach<T>(call: () => Promise<Result<T>>): Promise<Result<T>> {
  try {
    return await call();
  } catch {
    return refuse("unavailable", "The server could not be reached. What you wrote is still here; try again in a moment.");
  }
}
