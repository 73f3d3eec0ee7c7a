/**
 * What “beyond economic repair” means, wherever a letter or a report uses the words: the work costs more than the mended rug is worth,
 * or mends too little. Common practice, no published source.
 */
export const BEYOND_REPAIR_MEANS = "putting it right would cost more than the rug is then worth, or bring back too little to be worth its cost";
