import path from "node:path";
import { configDefaults, defineConfig } from "vitest/config";

/** Tests of pure rooms (`PURE` in eslint.config.mjs) and of what is held against published tables: nothing they import keeps anything, so that their files share it. */
const PURE = ["tests/unit/{reply,triage,trade,words}/**/*.test.ts", "tests/reference/**/*.test.ts"];
const OTHERS = ["tests/unit/**/*.test.ts", "tests/unit/**/*.test.tsx", "tests/simulation/**/*.test.ts", "tests/store/**/*.test.ts", "tests/faults/**/*.test.ts", "tests/mail/**/*.test.ts"];

export default defineConfig({
  resolve: { alias: { "@": import.meta.dirname, "server-only": path.join(import.meta.dirname, "node_modules/server-only/empty.js") } },
  test: {
    environment: "node",
    setupFiles: ["tests/setup.ts"],
    testTimeout: 30_000,
    hookTimeout: 300_000,
    maxWorkers: 2,
    projects: [
      { extends: true, test: { name: "pure", include: PURE, isolate: false } },
      { extends: true, test: { name: "others", include: OTHERS, exclude: [...configDefaults.exclude, ...PURE] } },
    ],
  },
});
