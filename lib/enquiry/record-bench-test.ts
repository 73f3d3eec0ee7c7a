import "server-only";
import { closedReadings, openTests } from "../workshop/open-tests";
import { readSettings } from "../workshop/settings";
import { authorise, NOT_THERE } from "./authorise";
import { benchTestSchema, isTestId, readingsOf, testRow } from "./bench-test-schema";
import { refuse, type Caller, type Result } from "./caller";
import { formIdSchema, keepTest, refuseFields, type Kept } from "./keep-test";
import { inOneStepOfMany } from "./one-step";

export interface NewBenchTest { id: string; rugId: string; test: string; sample: string; readings: Readonly<Record<string, unknown>> }

/** Keeps what a test showed and judges the rug anew, in one step. Only a test that the owner has opened can be recorded. */
export async function recordBenchTest(caller: Caller, { id, rugId, test, sample, readings }: NewBenchTest, now: Date): Promise<Result<Kept>> {
  const no = authorise(caller, "record-test");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  if (!isTestId(test) || !formIdSchema.safeParse(id).success) return NOT_THERE;
  const parsed = benchTestSchema(test).safeParse({ sample, readings });
  if (!parsed.success) return refuseFields("Please look at the readings again.", parsed.error.issues);
  return inOneStepOfMany(async (tx) => {
    const { reagents } = await readSettings(tx);
    const closed = closedReadings(test, reagents).filter((r) => parsed.data.readings[r] !== undefined);
    if (!openTests(reagents).includes(test) || closed.length > 0) return switchedOff(testRow(test).name);
    const row = { id, rugId, test, yarn: parsed.data.sample, response: readingsOf(parsed.data.readings) };
    return keepTest(tx, caller, { row, action: "test-recorded", now });
  });
}

const switchedOff = (name: string) => refuse("not-allowed", `${name}: the owner has not switched on what it takes.`);
