import { migrateDatabase } from "../../lib/store/database";

// A process of its own that applies the migrations and says which.
console.log(JSON.stringify(await migrateDatabase()));
