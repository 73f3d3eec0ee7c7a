import path from "node:path";
import { defineConfig } from "vitest/config";

export default defineConfig({
  resolve: { alias: { "@": import.meta.dirname, "server-only": path.join(import.meta.dirname, "node_modules/server-only/empty.js") } },
  test: {
    include: ["tests/unit/**/*.test.ts", "tests/unit/**/*.test.tsx", "tests/reference/**/*.test.ts", "tests/simulation/**/*.test.ts", "tests/store/**/*.test.ts", "tests/faults/**/*.test.ts", "tests/mail/**/*.test.ts"],
    environment: "node",
    setupFiles: ["tests/setup.ts"],
    testTimeout: 30_000,
    hookTimeout: 300_000,
    maxWorkers: 2,
  },
});
