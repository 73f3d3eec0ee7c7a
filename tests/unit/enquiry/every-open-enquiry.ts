import { beforeAll } from "vitest";
import { holdingOvertaken } from "./holding-overtaken";
import { judgingAnew } from "./judging-anew";
import { openWorkshop } from "./open-workshop";
import { ownParagraphs } from "./own-paragraphs";

/** What goes over every open enquiry, on whichever database is named: in a workshop of its own, where few are open. */
export function everyOpenEnquiry(): void {
  beforeAll(openWorkshop);
  ownParagraphs();
  judgingAnew();
  // It judges every open enquiry too, at a time still later.
  holdingOvertaken();
}
