import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { defineConfig } from "eslint/config";
import next from "eslint-config-next/core-web-vitals";
import nextTs from "eslint-config-next/typescript";
import boundaries from "eslint-plugin-boundaries";
import importX from "eslint-plugin-import-x";

// The house's one direction: app, ui, commands > enquiry > reply > triage; mail, staff, workshop > trade, photo, store, config.
// photo-server is the half of photo that reads and writes files; generated are the two database clients.
const PURE = ["trade", "words", "photo", "triage", "reply"];
const BELOW_ENQUIRY = [...PURE, "print", "photo-server", "store", "mail", "staff", "workshop", "config"];
const MAY_IMPORT = {
  generated: [],
  trade: [],
  words: ["trade", "photo"],
  config: [],
  photo: [],
  "photo-server": ["photo", "store", "config"],
  store: ["generated", "config"],
  triage: ["trade"],
  reply: ["trade", "words", "triage"],
  print: ["reply", "words"],
  workshop: ["trade", "words", "store", "config"],
  staff: ["words", "store", "config", "workshop"],
  mail: ["words", "store", "config", "workshop"],
  enquiry: BELOW_ENQUIRY,
  ui: [...PURE, "enquiry"],
  app: [...BELOW_ENQUIRY.filter((room) => room !== "store"), "enquiry", "ui"],
  commands: [...BELOW_ENQUIRY, "enquiry"],
};
// The narrower folder stands first: a file belongs to the first that fits.
const ELEMENTS = [
  { type: "generated", pattern: "lib/store/generated" },
  { type: "photo-server", pattern: "lib/photo/server" },
  { type: "app", pattern: "app" },
  ...Object.keys(MAY_IMPORT).filter((room) => !["generated", "photo-server", "app"].includes(room)).map((room) => ({ type: room, pattern: `lib/${room}` })),
];

const SERVER_FILES = ["store", "mail", "print", "staff", "workshop", "enquiry", "photo/server"].map((room) => `lib/${room}/**/*.ts`).concat("lib/config/config.ts");
const MARK = /^import "server-only";/;
const HARMLESS = /^(zod(\/mini)?|.*\/(trade|triage|reply|photo|words(\/en)?)\/[\w-]+)$/;

/** Schemas, view types and other pure files of a server room may go to the browser; whatever imports a server module is one. */
const serverOnlyFirst = {
  meta: { type: "problem", messages: { first: 'It imports "{{what}}", so it is a server module and begins with `import "server-only";`.' }, schema: [] },
  create: (context) => {
    const isServers = (from) => {
      if (HARMLESS.test(from)) return false;
      if (!from.startsWith(".")) return true;
      const file = path.resolve(path.dirname(context.filename), `${from}.ts`);
      return !existsSync(file) || MARK.test(readFileSync(file, "utf8"));
    };
    return {
      Program(program) {
        if (MARK.test(context.sourceCode.text)) return;
        const from = program.body.filter((n) => n.source && n.importKind !== "type" && n.exportKind !== "type").find((n) => isServers(n.source.value));
        if (from) context.report({ node: from, messageId: "first", data: { what: from.source.value } });
      },
    };
  },
};

export default defineConfig([
  { ignores: ["node_modules/", ".next/", "lib/store/generated/", "prisma/.assembled/", "next-env.d.ts", "data/", "demo-data/", "test-results/"] },
  ...next,
  ...nextTs,
  {
    linterOptions: { reportUnusedDisableDirectives: "error" },
    rules: {
      // Photos are private and already have their sizes: they never pass the image optimiser.
      "@next/next/no-img-element": "off",
      "import/no-anonymous-default-export": "off",
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_", varsIgnorePattern: "^_", destructuredArrayIgnorePattern: "^_" }],
    },
  },
  {
    files: ["app/**/*.{ts,tsx}", "lib/**/*.{ts,tsx}"],
    plugins: { boundaries, "import-x": importX, house: { rules: { "server-only-first": serverOnlyFirst } } },
    settings: {
      "import/resolver": { typescript: { project: "./tsconfig.json" } },
      "import-x/resolver": { typescript: { project: "./tsconfig.json" } },
      "import-x/extensions": [".ts", ".tsx", ".mjs"],
      "import-x/parsers": { "@typescript-eslint/parser": [".ts", ".tsx"] },
      "boundaries/elements": ELEMENTS,
    },
    rules: {
      "boundaries/dependencies": ["error", {
        default: "disallow",
        message: "{{from.element.type}} may not import {{to.element.type}}: see the table in eslint.config.mjs.",
        policies: Object.entries(MAY_IMPORT).map(([room, below]) => ({
          from: { element: { type: room } },
          allow: [{ to: { element: { type: [room, ...below] } } }],
        })),
      }],
      "import-x/no-cycle": ["error", { ignoreExternal: true }],
      "no-restricted-properties": ["error", { object: "process", property: "env", message: "Only lib/config reads the environment." }],
      "no-restricted-syntax": ["error", { selector: "ExportAllDeclaration", message: "No barrels: import from the file itself." }],
      "max-lines-per-function": ["error", { max: 80, skipComments: true, skipBlankLines: true }],
      "max-lines": ["error", { max: 250 }],
      "@typescript-eslint/consistent-type-imports": "error",
    },
  },
  {
    files: ["app/**/*.tsx", "lib/ui/**/*.tsx"],
    ignores: ["lib/ui/link.tsx"],
    rules: { "no-restricted-imports": ["error", { paths: [{ name: "next/link", message: "Link of lib/ui/link.tsx fetches nothing ahead." }] }] },
  },
  // A table of facts is as long as its facts.
  { files: ["lib/trade/**/*.ts"], rules: { "max-lines": "off" } },
  { files: SERVER_FILES, rules: { "house/server-only-first": "error" } },
  { files: ["lib/config/**/*.ts"], rules: { "no-restricted-properties": "off" } },
  {
    files: PURE.map((room) => `lib/${room}/**/*.ts`),
    ignores: ["lib/photo/server/**"],
    rules: {
      "no-restricted-imports": ["error", { patterns: ["node:*", "react", "next/*", "server-only"] }],
      "no-restricted-globals": ["error", "Date", "process", "fetch", "setTimeout"],
      "no-restricted-syntax": ["error",
        { selector: "ExportAllDeclaration", message: "No barrels: import from the file itself." },
        { selector: "MemberExpression[object.name='Math'][property.name='random']", message: "A pure room draws from a seeded generator." }],
    },
  },
]);
