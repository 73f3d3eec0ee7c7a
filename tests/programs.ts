import { accessSync, constants } from "node:fs";
import path from "node:path";

const onPath = (program: string): boolean => (process.env.PATH ?? "").split(path.delimiter).some((folder) => {
  try {
    accessSync(path.join(folder, program), constants.X_OK);
    return true;
  } catch {
    return false;
  }
});

/** What cannot be checked on this machine, and why. Where CI is set `.ci/run` brings every program, so there nothing is passed over in silence. */
export function passedOver(why: string): string {
  if (process.env.CI) throw new Error(`In CI nothing is passed over: ${why}`);
  return why;
}

/** Whether every one of `programs` is on this machine, so that a check which leans on them is left out where it cannot run. */
export function hasPrograms(...programs: readonly string[]): boolean {
  const missing = programs.filter((program) => !onPath(program));
  if (missing.length > 0) passedOver(`${missing.join(", ")} not installed.`);
  return missing.length === 0;
}
