import { spawnSync } from "node:child_process";
import { makeReady } from "./harness";

/** The pages are built once, before any server of the tests starts, where no fresh ones are there; and a data folder is made ready that every test copies. */
export default function globalSetup(): Promise<() => void> {
  const code = `import { ensureClients } from "./lib/commands/generate"; import { ensureBuilt } from "./lib/commands/build";
    await ensureClients(process.cwd()); await ensureBuilt(process.cwd());`;
  const run = spawnSync(process.execPath, ["--conditions=react-server", "--import", "tsx", "--input-type=module", "-e", code], { stdio: "inherit" });
  if (run.status !== 0) throw new Error("The pages could not be built, so nothing was tested in a browser.");
  return makeReady();
}
