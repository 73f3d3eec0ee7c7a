import { onPostgresql } from "../../on-postgresql";

await onPostgresql(async () => (await import("./all-operations")).allOperations);
