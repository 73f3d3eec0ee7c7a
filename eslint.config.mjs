import { defineConfig } from "eslint/config";
import next from "eslint-config-next/core-web-vitals";
import nextTs from "eslint-config-next/typescript";
import boundaries from "eslint-plugin-boundaries";

// The house's one direction: app, ui, commands > enquiry > reply > triage; mail, staff, workshop > trade, photo, store, config.
const ROOMS = ["trade", "photo", "triage", "reply", "enquiry", "store", "mail", "staff", "workshop", "config", "commands", "ui"];
const PURE = ["trade", "triage", "reply", "photo"];
const MAY_IMPORT = {
  trade: [],
  config: [],
  photo: ["config"],
  store: ["config"],
  triage: ["trade"],
  reply: ["trade", "triage"],
  workshop: ["trade", "store", "config"],
  staff: ["store", "config", "workshop"],
  mail: ["store", "config", "workshop"],
  enquiry: ["trade", "photo", "triage", "reply", "store", "mail", "staff", "workshop", "config"],
  ui: ["trade", "triage", "reply", "photo", "enquiry"],
  app: [...ROOMS.filter((r) => !["store", "commands"].includes(r))],
  commands: [...ROOMS.filter((r) => r !== "ui")],
};

export default defineConfig([
  { ignores: ["node_modules/", ".next/", "lib/store/generated/", "prisma/.assembled/", "next-env.d.ts", "data/", "demo-data/", "test-results/"] },
  ...next,
  ...nextTs,
  {
    files: ["app/**/*.{ts,tsx}", "lib/**/*.{ts,tsx}"],
    plugins: { boundaries },
    settings: {
      "import/resolver": { typescript: { project: "./tsconfig.json" } },
      "boundaries/elements": [{ type: "app", pattern: "app" }, ...ROOMS.map((r) => ({ type: r, pattern: `lib/${r}` }))],
    },
    rules: {
      "boundaries/element-types": ["error", {
        default: "disallow",
        rules: Object.entries(MAY_IMPORT).map(([from, allow]) => ({ from, allow: [from, ...allow] })),
      }],
      "no-restricted-properties": ["error", { object: "process", property: "env", message: "Only lib/config reads the environment." }],
      "max-lines-per-function": ["error", { max: 80, skipComments: true, skipBlankLines: true }],
      "@typescript-eslint/consistent-type-imports": "error",
    },
  },
  { files: ["lib/config/**/*.ts", "lib/commands/**/*.ts"], rules: { "no-restricted-properties": "off" } },
  {
    files: [...PURE.map((r) => `lib/${r}/**/*.ts`)],
    ignores: ["lib/photo/server/**"],
    rules: {
      "no-restricted-imports": ["error", { patterns: ["node:*", "react", "next/*", "server-only"] }],
      "no-restricted-globals": ["error", "Date", "process", "fetch", "setTimeout"],
      "no-restricted-syntax": ["error", { selector: "MemberExpression[object.name='Math'][property.name='random']", message: "A pure room draws from a seeded generator." }],
    },
  },
]);
