import { levelAt, type Grey } from "./grey";

/** A rectangle that may lie turned, in pixels: its middle, its sides, and how far it is turned clockwise, in degrees. */
export interface Turned { readonly x: number; readonly y: number; readonly width: number; readonly height: number; readonly degrees: number }

/** What lies in a turned rectangle, laid straight at `scale` pixels for one. */
export function cutOut(grey: Grey, place: Turned, scale: number): Grey {
  const width = Math.max(1, Math.round(place.width * scale)), height = Math.max(1, Math.round(place.height * scale));
  const angle = (place.degrees * Math.PI) / 180, cos = Math.cos(angle) / scale, sin = Math.sin(angle) / scale;
  const data = new Float32Array(width * height);
  for (let j = 0; j < height; j++)
    for (let i = 0; i < width; i++) {
      const dx = i + 0.5 - width / 2, dy = j + 0.5 - height / 2;
      data[j * width + i] = levelAt(grey, place.x + dx * cos - dy * sin - 0.5, place.y + dx * sin + dy * cos - 0.5);
    }
  return { data, width, height };
}

/** The same rectangle seen with another side up: `quarters` of a turn clockwise. */
export function onItsSide(place: Turned, quarters: number): Turned {
  const lies = quarters % 2 === 1;
  return { ...place, width: lies ? place.height : place.width, height: lies ? place.width : place.height, degrees: normalDegrees(place.degrees + 90 * quarters) };
}

/** A picture turned a quarter anticlockwise: what lies in a place that is seen as one quarter further clockwise. */
export function turnedBack({ data, width, height }: Grey): Grey {
  const turned = new Float32Array(data.length);
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) turned[(width - 1 - x) * height + y] = data[y * width + x]!;
  return { data: turned, width: height, height: width };
}

/** Between −180 (not included) and 180. */
export const normalDegrees = (degrees: number): number => {
  const rest = ((degrees % 360) + 360) % 360;
  return rest > 180 ? rest - 360 : rest;
};

/** A rectangle of a picture that was made larger or smaller. */
export const scaled = (place: Turned, by: number): Turned => ({ x: place.x * by, y: place.y * by, width: place.width * by, height: place.height * by, degrees: place.degrees });

/** The smallest upright rectangle around a turned one, in shares of the picture and cut at its edges. */
export function uprightAround(place: Turned, picture: { width: number; height: number }): { x: number; y: number; width: number; height: number } {
  const angle = (place.degrees * Math.PI) / 180, cos = Math.abs(Math.cos(angle)), sin = Math.abs(Math.sin(angle));
  const [w, h] = [place.width * cos + place.height * sin, place.width * sin + place.height * cos];
  const share = (from: number, all: number) => Math.min(1, Math.max(0, from / all));
  const left = share(place.x - w / 2, picture.width), top = share(place.y - h / 2, picture.height);
  return { x: left, y: top, width: share(place.x + w / 2, picture.width) - left, height: share(place.y + h / 2, picture.height) - top };
}
