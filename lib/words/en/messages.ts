import { BROWSER } from "./browser";
import { COPY } from "./copy";
import { DOCUMENTS } from "./documents";
import { HISTORY } from "./history";
import { HOW_WE_JUDGE } from "./how-we-judge";
import { LABEL } from "./label";
import { LETTERS } from "./letters";
import { MAIL } from "./mail";
import { OWN_PAGE } from "./own-page";
import { PAGES } from "./pages";
import { QUESTIONNAIRE } from "./questionnaire";
import { REFUSALS } from "./refusals";
import { WRONG } from "./wrong";

/** The whole catalogue in English. Its keys and their arguments are what every other language must have. */
export const EN = { ...PAGES, ...QUESTIONNAIRE, ...OWN_PAGE, ...HOW_WE_JUDGE, ...HISTORY, ...COPY, ...LABEL, ...LETTERS, ...DOCUMENTS, ...MAIL, ...BROWSER, ...WRONG, ...REFUSALS } as const;
export type Messages = typeof EN;
