import "server-only";
import { database } from "../store/database";

/** Names of people here by their ids; somebody who is no longer there is said so. */
export async function peopleNames(ids: readonly (string | null)[]): Promise<(id: string | null) => string> {
  const known = [...new Set(ids.filter((id) => id !== null))];
  const people = await database().staff.findMany({ where: { id: { in: known } }, select: { id: true, name: true } });
  const names = new Map(people.map((p) => [p.id, p.name]));
  return (id) => (id === null ? undefined : names.get(id)) ?? "Somebody who has left";
}
