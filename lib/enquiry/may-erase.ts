/** Where the form of the settings says that enquiries may be erased: a place of its own for each number of months, so that a tick given for one agrees to no other. */
const BEGINS = "mayErase-";
export const mayErasePlace = (months: number): string => `${BEGINS}${months}`;
/** For how many months such a place is; null of any other place. */
export const monthsOfPlace = (place: string): number | null => (place.startsWith(BEGINS) ? Number(place.slice(BEGINS.length)) : null);

/** What stands beside it. `count` from 1. */
export const wouldErase = (count: number, months: number): string =>
  `In ${count === 1 ? "one enquiry" : `${count.toLocaleString("en")} enquiries`} nothing has waited for you for ${inMonths(months)} or longer: ${count === 1 ? "it" : "they"} would be erased within the hour, photos and letters too, and nothing brings ${count === 1 ? "it" : "them"} back. Tick that ${count === 1 ? "it" : "they"} may go, or write more months.`;
export const inMonths = (months: number): string => (months === 1 ? "one month" : `${months} months`);
