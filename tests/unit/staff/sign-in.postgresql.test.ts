import { onPostgresql } from "../../on-postgresql";

await onPostgresql(async () => (await import("./signing-in")).signingIn);
