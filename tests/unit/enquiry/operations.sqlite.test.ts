import { allOperations } from "./all-operations";

allOperations();
