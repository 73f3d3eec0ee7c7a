import { runCommand } from "./command";
import { assertPortFree, readyDatabase } from "./ready";
import { nextBin, runInFront } from "./run-program";

async function main(): Promise<number> {
  const root = process.cwd();
  const { config } = await import("../config/config");
  await assertPortFree(config.host, config.port);
  await readyDatabase(root);
  return runInFront(root, [nextBin(root), "dev", "-H", config.host, "-p", String(config.port)], { NODE_ENV: "development" });
}

await runCommand(main);
