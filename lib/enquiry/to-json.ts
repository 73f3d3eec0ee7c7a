import "server-only";
import type { Prisma } from "../store/database";

/** A record of ours as a Json column takes it: what is undefined is left out, an interface becomes plain data. */
export const toJson = (value: object): Prisma.InputJsonObject => JSON.parse(JSON.stringify(value)) as Prisma.InputJsonObject;
