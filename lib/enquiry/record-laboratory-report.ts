import "server-only";
import { authorise, NOT_THERE } from "./authorise";
import { refuse, type Caller, type Result } from "./caller";
import { formIdSchema, keepTest, refuseFields, type Kept } from "./keep-test";
import { LABORATORY, laboratoryEntrySchema, type LaboratoryEntry } from "./laboratory-schema";
import { inOneStepOfMany } from "./one-step";
import type { SampleId } from "./samples";
import { toJson } from "./to-json";
import { percentsOfWeighings, weighedEntrySchema, type LaboratoryReport, type WeighedEntry } from "./weighings-schema";

/** What a laboratory reported of a sample: per cents, or the weighings they follow from. */
export type NewReport = (LaboratoryEntry | WeighedEntry) & { id: string; rugId: string };

const LOOK_AGAIN = "Please look at the report again.";
type Read = { ok: true; sample: SampleId; report: LaboratoryReport } | ReturnType<typeof refuse>;

function readWeighed(given: object): Read {
  const parsed = weighedEntrySchema.safeParse(given);
  if (!parsed.success) return refuseFields(LOOK_AGAIN, parsed.error.issues);
  const { sample, ...report } = parsed.data;
  const found = percentsOfWeighings(report.weighings);
  return found.ok ? { ok: true, sample, report: { ...report, percents: found.percents } } : refuse("invalid", LOOK_AGAIN, { form: found.say });
}

function readPercents(given: object): Read {
  const parsed = laboratoryEntrySchema.safeParse(given);
  if (!parsed.success) return refuseFields(LOOK_AGAIN, parsed.error.issues);
  const { sample, ...report } = parsed.data;
  return { ok: true, sample, report };
}

/** Keeps a laboratory's report and judges the rug anew, in one step. Needs no reagent here. */
export async function recordLaboratoryReport(caller: Caller, { id, rugId, ...given }: NewReport, now: Date): Promise<Result<Kept>> {
  const no = authorise(caller, "record-test");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  if (!formIdSchema.safeParse(id).success) return NOT_THERE;
  const read = "weighings" in given ? readWeighed(given) : readPercents(given);
  if (!read.ok) return read;
  const row = { id, rugId, test: LABORATORY, yarn: read.sample, response: toJson(read.report) };
  return inOneStepOfMany((tx) => keepTest(tx, caller, { row, action: "report-recorded", now }));
}
