import { copyFileSync, mkdirSync } from "node:fs";
import path from "node:path";
import { defineConfig } from "prisma/config";
import { databaseUrl, providerOf } from "./lib/config/database-url";

// One set of models, two providers: assemble the schema folder of the one in use.
const provider = providerOf(databaseUrl());
const here = import.meta.dirname;
const out = path.join(here, "prisma/.assembled", provider);
mkdirSync(out, { recursive: true });
copyFileSync(path.join(here, "prisma/schema/models.prisma"), path.join(out, "models.prisma"));
copyFileSync(path.join(here, `prisma/schema/datasource.${provider}.prisma.in`), path.join(out, "datasource.prisma"));

export default defineConfig({
  schema: out,
  migrations: { path: `prisma/migrations/${provider}` },
  datasource: { url: databaseUrl() },
});
