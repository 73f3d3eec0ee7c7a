import "server-only";
import { forbids } from "../staff/deeds";
import { database } from "../store/database";
import { OLDEST_FIRST } from "../store/row-order";
import { readSettings } from "../workshop/settings";
import { authorise, NOT_THERE } from "./authorise";
import { ok, type Caller, type Result } from "./caller";
import { markersOf, measurementView } from "./measurement-view";
import { peopleNames } from "./people-names";
import { photoView, photoViews } from "./photo-view";
import { rugAnswersOf } from "./stored";
import type { PhotoDeskView } from "./measured-views";

/** One photo of an enquiry with everything that was measured in it, for the desk. */
export async function readPhotoDesk(caller: Caller, { enquiryId, photoId }: { enquiryId: string; photoId: string }): Promise<Result<PhotoDeskView>> {
  const no = authorise(caller, "read-desk");
  if (no || caller.kind !== "staff") return no ?? NOT_THERE;
  const photo = await database().photo.findUnique({
    where: { id: photoId },
    include: {
      label: true,
      measurements: { orderBy: OLDEST_FIRST.at },
      rug: { include: { answers: true, photos: { orderBy: { position: "asc" } }, enquiry: { select: { reference: true } } } },
    },
  });
  if (!photo?.rug || photo.rug.enquiryId !== enquiryId) return NOT_THERE;
  const { rug, measurements } = photo;
  const [{ prices, currency, locale, areaUnit }, nameOf] = await Promise.all([readSettings(), peopleNames(markersOf(measurements))]);
  const { widthCm = null, lengthCm = null, labelText = null } = rugAnswersOf(rug.answers);
  return ok({
    enquiryId,
    reference: rug.enquiry.reference,
    rug: { title: rug.title, widthCm, lengthCm },
    photo: photoView(photo, { told: labelText }),
    others: photoViews(rug.photos).filter((p) => p.id !== photoId),
    measurements: measurements.flatMap((m) => measurementView(m, nameOf)),
    mayMeasure: forbids(caller, "measure-photo") === null && forbids(caller, "plan-rug") === null,
    money: { bindingPerM: prices.bindingPerM, currency, locale, areaUnit },
  });
}
