/** The few functions of culori that the reference tests use; the package brings no types. */
declare module "culori" {
  interface Rgb { mode: "rgb" | "p3"; r: number; g: number; b: number }
  interface Lab65 { mode: "lab65"; l: number; a: number; b: number }
  type Colour = Rgb | Lab65;
  export function converter(mode: "lab65"): (colour: Colour) => Lab65;
  export function converter(mode: "rgb" | "p3"): (colour: Colour) => Rgb;
  export function differenceCiede2000(): (one: Colour, two: Colour) => number;
  export function formatHex(colour: Colour): string;
}
