import { beforeAll } from "vitest";
import { allOperations } from "./all-operations";
import { openWorkshop } from "./open-workshop";

beforeAll(openWorkshop);
allOperations();
