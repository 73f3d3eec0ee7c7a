import { cloud, grain, hash, linear, mix, smooth, speck, type Surface } from "./canvas";

/**
 * Letters as a label printer draws them: strokes between points of a grid 4 wide and 6 high, so that no font of the
 * machine is needed. Each stroke is a run of points "xy"; strokes are parted by spaces. Small letters are drawn large.
 */
const STROKES: Record<string, string> = {
  A: "0620 2046 1434", B: "000636 0030413233 03334536", C: "4130100115 151636 3645", D: "0006 00304145360 3606", E: "400006 46 0333 0646", F: "4000 0006 0333",
  G: "41301001051636454333", H: "0006 4046 0343", I: "2026 1030 1636", J: "40453616 1605", K: "0006 4003 0346", L: "000646", M: "0600234046", N: "06004640",
  O: "10304145361605011 0110", P: "0600304142330 3303", Q: "1030414536160501 0110 2446", R: "0600304142330 3303 2346", S: "413010010213334445361605", T: "0040 2026",
  U: "000516364540", V: "002640", W: "0016233640", X: "0046 4006", Y: "0023 4023 2326", Z: "00400646",
  0: "1030414536160501 0110 4105", 1: "012026 1636", 2: "011030414206 0646", 3: "0110304142332 33444536160 1605", 4: "30043 0444 3036", 5: "40000232434536160 1605",
  6: "413010010516364544331303", 7: "004016", 8: "1030414233130201 0110 1304051636454433", 9: "05163645413010010213334 3342",
  "%": "4006 00101101 0100 35464536 3536", "/": "4006", "-": "1333", "+": "2125 0343", ".": "2526", ",": "2516", ":": "2122 2526", "'": "2021", "(": "3011153 1536", ")": "1031351 3516", "&": "4612113032042 0415264", "?": "01103041422324 2626",
};
const LETTER = { width: 4, height: 6, gap: 2.1 };

/** Centimetres. */
const CLOTH = { width: 9.4, height: 6.2 };
const DOTS = 90;

/** A white cloth with printed lines, sewn on all round; what lies outside it is left as it was. */
export function labelCloth(text: string, seed: number): Surface {
  const ink = print(text);
  const white = linear(hash(seed, 31) < 0.3 ? "#e2d9c4" : "#ecebe6"), black = linear("#23252b"), thread = linear("#8c8577");
  const columns = Math.round(CLOTH.width * DOTS), rows = Math.round(CLOTH.height * DOTS);
  return (x, y, out) => {
    const wx = x + 0.05 * cloud(x * 9 + seed, y * 9), wy = y + 0.05 * cloud(x * 9, y * 9 + seed);
    const edge = Math.min(CLOTH.width / 2 - Math.abs(wx), CLOTH.height / 2 - Math.abs(wy));
    if (edge < 0) {
      const shade = 1 - 0.5 * Math.exp(edge / 0.22);
      out[0]! *= shade; out[1]! *= shade; out[2]! *= shade;
      return;
    }
    const column = Math.floor((wx + CLOTH.width / 2) * DOTS), row = Math.floor((wy + CLOTH.height / 2) * DOTS);
    const printed = column >= 0 && row >= 0 && column < columns && row < rows ? ink[row * columns + column]! * (0.9 + 0.1 * speck(x * 60, y * 60)) : 0;
    const fold = 0.1 * cloud(x * 7 + seed * 9, y * 4) + 0.05 * Math.sin(x * 1.1 + y * 2.3 + seed);
    const satin = 0.04 * Math.sin(wy * 140) + 0.035 * Math.sin(wx * 95) + 0.04 * grain(x * 55, y * 55);
    const light = (0.88 + fold + satin) * (0.8 + 0.2 * smooth(0, 0.16, edge));
    for (let c = 0; c < 3; c++) out[c] = mix(white[c]!, black[c]!, printed * 0.92) * light;
    const at = Math.abs(wx) > CLOTH.width / 2 - 0.5 ? wy : wx;
    const stitch = smooth(0.055, 0.025, Math.abs(edge - 0.25)) * smooth(0.5, 0.35, Math.abs(((at / 0.34) % 1 + 1) % 1 - 0.5));
    for (let c = 0; c < 3; c++) out[c] = mix(out[c]!, thread[c]! * (0.7 + 0.4 * light), stitch);
  };
}

/** The lines of a text as ink, 0 to 1, on a field of dots; each line as large as fits, the first a little larger. */
function print(text: string): Float32Array {
  const columns = Math.round(CLOTH.width * DOTS), rows = Math.round(CLOTH.height * DOTS);
  const ink = new Float32Array(columns * rows);
  const lines = text.toUpperCase().split("\n").map((line) => line.trim()).filter(Boolean).slice(0, 7);
  const longest = Math.max(8, ...lines.map((line) => line.length));
  const scale = Math.min((columns - 110) / (longest * (LETTER.width + LETTER.gap)), (rows - 110) / (lines.length * 10.5));
  lines.forEach((line, n) => {
    const wide = (line.length * (LETTER.width + LETTER.gap) - LETTER.gap) * scale;
    const left = (columns - wide) / 2, top = rows / 2 + (n - lines.length / 2) * 10.5 * scale + 2.2 * scale;
    [...line].forEach((letter, i) => write(ink, columns, STROKES[letter] ?? "", { x: left + i * (LETTER.width + LETTER.gap) * scale, y: top, scale }));
  });
  return ink;
}

function write(ink: Float32Array, columns: number, strokes: string, at: { x: number; y: number; scale: number }): void {
  for (const stroke of strokes.split(" ")) {
    for (let i = 0; i + 3 < stroke.length; i += 2) {
      const [x0, y0, x1, y1] = [...stroke.slice(i, i + 4)].map(Number) as [number, number, number, number];
      drawLine(ink, columns, { x0: at.x + x0 * at.scale, y0: at.y + y0 * at.scale, x1: at.x + x1 * at.scale, y1: at.y + y1 * at.scale }, at.scale * 0.42);
    }
  }
}

function drawLine(ink: Float32Array, columns: number, { x0, y0, x1, y1 }: { x0: number; y0: number; x1: number; y1: number }, half: number): void {
  const long = Math.hypot(x1 - x0, y1 - y0) || 1, reach = half + 1;
  for (let y = Math.floor(Math.min(y0, y1) - reach); y <= Math.max(y0, y1) + reach; y++) {
    for (let x = Math.floor(Math.min(x0, x1) - reach); x <= Math.max(x0, x1) + reach; x++) {
      const t = Math.min(1, Math.max(0, ((x - x0) * (x1 - x0) + (y - y0) * (y1 - y0)) / (long * long)));
      const d = Math.hypot(x - x0 - t * (x1 - x0), y - y0 - t * (y1 - y0));
      const i = y * columns + x;
      if (i >= 0 && i < ink.length) ink[i] = Math.max(ink[i]!, smooth(half + 0.8, half - 0.8, d));
    }
  }
}
