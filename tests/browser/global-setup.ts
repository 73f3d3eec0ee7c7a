import { spawnSync } from "node:child_process";

/** The pages are built once, before any server of the tests starts; nothing is done where the build is fresh. */
export default function globalSetup(): void {
  const code = `import { ensureClients } from "./lib/commands/generate"; import { ensureBuilt } from "./lib/commands/build";
    await ensureClients(process.cwd()); await ensureBuilt(process.cwd());`;
  const run = spawnSync(process.execPath, ["--conditions=react-server", "--import", "tsx", "--input-type=module", "-e", code], { stdio: "inherit" });
  if (run.status !== 0) throw new Error("The pages could not be built, so nothing was tested in a browser.");
}
