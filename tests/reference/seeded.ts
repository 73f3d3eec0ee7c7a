/** Numbers from 0 to 1, the same for the same seed: a linear congruential generator (Knuth's MMIX constants), for tests. */
export function seeded(seed: number): () => number {
  let state = BigInt(seed);
  return () => {
    state = (state * 6364136223846793005n + 1442695040888963407n) & 0xffffffffffffffffn;
    return Number(state >> 11n) / 2 ** 53;
  };
}
