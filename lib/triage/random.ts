/**
 * A seeded generator, so that the same seed gives the same interval on every machine.
 * sfc32 (Doty-Humphrey's Small Fast Counting generator, PractRand), seeded by mixing the characters of its name;
 * both from memory. The tests compare its moments with the known ones.
 */
export type Random = () => number;

/** Four 32-bit seeds from any text: multiply-xor mixing with the golden ratio's fraction and primes. */
function mixed(text: string): [number, number, number, number] {
  const h: [number, number, number, number] = [0x9e3779b9, 0x243f6a88, 0xb7e15162, 0x85ebca6b];
  const primes = [597399067, 2869860233, 951274213, 2716044179] as const;
  for (let i = 0; i < text.length; i += 1) {
    const c = text.charCodeAt(i);
    for (const k of [0, 1, 2, 3] as const) h[k] = Math.imul(h[k] ^ c ^ (h[(k + 1) % 4 as 0 | 1 | 2 | 3] >>> 15), primes[k]);
  }
  return h;
}

/**
 * Uniform draws in [0, 1). `stream` names what is drawn: each table has its own stream, so adding one finding never
 * changes the draws of another.
 */
export function seededRandom(seed: number, stream: string): Random {
  let [a, b, c, d] = mixed(`${seed}/${stream}`);
  const next = () => {
    const t = (((a + b) | 0) + d) | 0;
    d = (d + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (c << 21) | (c >>> 11);
    c = (c + t) | 0;
    return (t >>> 0) / 4294967296;
  };
  for (let i = 0; i < 15; i += 1) next();
  return next;
}

/** A draw from the standard normal (Marsaglia's polar method, 1964, from memory). */
export function drawNormal(random: Random): number {
  for (;;) {
    const u = 2 * random() - 1;
    const v = 2 * random() - 1;
    const s = u * u + v * v;
    if (s > 0 && s < 1) return u * Math.sqrt((-2 * Math.log(s)) / s);
  }
}

/**
 * A draw from the gamma distribution of the given shape (> 0), scale 1. Marsaglia and Tsang, "A simple method for
 * generating gamma variables", ACM TOMS 26 (2000), from memory; shapes under 1 by their boost. May underflow to 0.
 */
export function drawGamma(random: Random, shape: number): number {
  if (!(shape > 0)) throw new RangeError(`Expected a shape above 0 but received ${shape}.`);
  if (shape < 1) return drawGamma(random, shape + 1) * Math.pow(1 - random(), 1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = drawNormal(random);
    const v = (1 + c * x) ** 3;
    if (v <= 0) continue;
    const u = 1 - random();
    if (Math.log(u) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
  }
}
