import "server-only";

export interface Migration { name: string; sql: string; checksum: string }
/** A row of `_prisma_migrations`, the table Prisma's own command line keeps, so that it agrees with what ran here. */
export interface Applied { name: string; checksum: string; finished: boolean }

export class MigrationError extends Error {
  override name = "MigrationError";
}

/**
 * Which migrations are still to be applied, in order.
 * @throws MigrationError where the database and the files tell different stories.
 */
export function pendingOf(all: readonly Migration[], applied: readonly Applied[]): Migration[] {
  const done = new Map(applied.map((a) => [a.name, a]));
  const known = new Set(all.map((m) => m.name));
  for (const { name, finished } of applied) {
    if (!finished) throw new MigrationError(`The migration ${name} failed earlier; restore a backup, or mend the database and its row in _prisma_migrations.`);
    if (!known.has(name)) throw new MigrationError(`The database has the migration ${name}, which this version does not know: it is older than the database.`);
  }
  for (const { name, checksum } of all) {
    const was = done.get(name);
    if (was && was.checksum !== checksum) throw new MigrationError(`The migration ${name} was changed after it was applied.`);
  }
  return all.filter((m) => !done.has(m.name));
}
