import { enlargedRow, inverted, mean, quantiles, shrunk, withoutStrokes, type Grey } from "./grey";

/** Print made even, whatever the light, the fold, and which of cloth and print is the darker. Numbers elicited on drawn labels. */

/** Pixels of the long side at which the light of the cloth is looked at; strokes there are narrower than twice STROKE. */
const LIGHT_SIDE = 240, STROKE = 7;
/** This quantile of the picture is full print. */
const FULL = 0.985;
/** Least difference of print and cloth, as a share of the cloth's light. Below it, what shows is weave. */
const LEAST_CONTRAST = 0.08;
/** Darkest level that cloth in the photo can have. */
const DARKEST = 8;

/** 0 cloth to 1 print. */
export function printOf(picture: Grey): Grey {
  const grey = isLightOnDark(picture) ? inverted(picture) : picture;
  const by = Math.max(1, Math.round(Math.max(grey.width, grey.height) / LIGHT_SIDE));
  const light = mean(withoutStrokes(mean(shrunk(grey, by), 1), STROKE), STROKE);
  const print = new Float32Array(grey.data.length), cloth = new Float32Array(grey.width);
  for (let y = 0, i = 0; y < grey.height; y++) {
    enlargedRow(light, by, y, cloth);
    for (let x = 0; x < grey.width; x++, i++) print[i] = Math.max(0, 1 - grey.data[i]! / Math.max(DARKEST, cloth[x]!));
  }
  const full = Math.max(LEAST_CONTRAST, ...quantiles({ ...grey, data: print }, [FULL]));
  for (let i = 0; i < print.length; i++) print[i] = Math.min(1, print[i]! / full);
  return { ...grey, data: print };
}

/** Print is the lesser part, so what lies far from the common level is print: is it lighter? */
function isLightOnDark(grey: Grey): boolean {
  const [darkest, middle, lightest] = quantiles(grey, [0.03, 0.5, 0.97]) as [number, number, number];
  return middle < 128 && lightest - middle > 1.6 * (middle - darkest);
}
