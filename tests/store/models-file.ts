import { readFileSync } from "node:fs";

export interface Table {
  columns: { name: string; optional: boolean; type: string }[];
  uniques: string[];
  indexes: string[];
  /** "enquiryId > Enquiry.id, delete CASCADE" */
  foreignKeys: string[];
}
const DELETE = { Cascade: "CASCADE", Restrict: "RESTRICT", SetNull: "SET NULL" } as const;

/** What models.prisma asks of the database, a table at a time. It reads no more of Prisma's language than that file uses. */
export function tablesOf(file: string): { tables: Record<string, Table>; enums: Record<string, string[]> } {
  const blocks = [...readFileSync(file, "utf8").matchAll(/^(model|enum) (\w+) \{\n([\s\S]*?)^\}/gm)]
    .map(([, kind, name, body]) => ({ kind, name: name ?? "", lines: (body ?? "").split("\n").map((l) => l.replace(/\/\/.*$/, "").trim()).filter(Boolean) }));
  const enums = Object.fromEntries(blocks.filter((b) => b.kind === "enum").map((b) => [b.name, b.lines]));
  const models = blocks.filter((b) => b.kind === "model");
  const names = new Set(models.map((m) => m.name));
  return { enums, tables: Object.fromEntries(models.map((m) => [m.name, tableOf(m.lines, names)])) };
}

function tableOf(lines: string[], models: ReadonlySet<string>): Table {
  const table: Table = { columns: [], uniques: [], indexes: [], foreignKeys: [] };
  const fields = (inBrackets: string | undefined) => (inBrackets ?? "").split(",").map((f) => f.trim()).join(", ");
  for (const line of lines) {
    const block = /^@@(unique|index)\(\[(.*?)\]/.exec(line);
    if (block) { table[block[1] === "unique" ? "uniques" : "indexes"].push(fields(block[2])); continue; }
    const [, name = "", type = "", mark = "", rest = ""] = /^(\w+)\s+(\w+)(\?|\[\])?\s*(.*)$/.exec(line) ?? [];
    if (models.has(type)) {
      const relation = /fields: \[(\w+)\], references: \[(\w+)\], onDelete: (\w+)/.exec(rest);
      if (relation) table.foreignKeys.push(`${relation[1]} > ${type}.${relation[2]}, delete ${DELETE[relation[3] as keyof typeof DELETE]}`);
      continue;
    }
    table.columns.push({ name, type, optional: mark === "?" });
    if (/@unique\b/.test(rest)) table.uniques.push(name);
  }
  return table;
}
