import { onPostgresql } from "../../on-postgresql";

await onPostgresql(async () => (await import("./every-open-enquiry")).everyOpenEnquiry);
