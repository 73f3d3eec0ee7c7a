import { addPhoto } from "../../lib/enquiry/add-photo";
import { openIntake } from "../../lib/enquiry/open-intake";
import { saveIntake } from "../../lib/enquiry/save-intake";
import { submitEnquiry } from "../../lib/enquiry/submit-enquiry";
import type { Caller, Result } from "../../lib/enquiry/caller";
import { answersOf, contactOf, pictureOf, PHOTO_KINDS_SENT } from "./submission";

// The process that the parent kills: sends one enquiry after another, photos and all, and says on its output which it
// has begun and which it was told are in.
const good = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(`${result.code}: ${result.say}`);
  return result.value;
};
const say = (event: object) => process.stdout.write(`${JSON.stringify(event)}\n`);

for (let n = Number(process.argv[2]); ; n++) {
  const now = new Date();
  const { intakeId } = good(await openIntake({ kind: "public", addressHash: null }, now));
  const caller: Caller = { kind: "intake", intakeId, addressHash: null };
  say({ begun: n, intakeId });
  good(await saveIntake(caller, answersOf(n)));
  const photos: string[] = [];
  for (const kind of PHOTO_KINDS_SENT) photos.push(good(await addPhoto(caller, { kind }, await pictureOf(n), { name: `${kind}.jpg`, type: "image/jpeg" }, now)).id);
  const { enquiryId, reference, clientToken } = good(await submitEnquiry(caller, { contact: contactOf(n), consent: true }, now));
  say({ acknowledged: n, intakeId, enquiryId, reference, clientToken, photos });
}
