/** One line of the table. */
export interface BenchRow {
  name: string;
  /** What the floor is, in words. Null: an absolute figure, reported only. */
  floor: string | null;
  /** The ratio to the floor that must not be passed; null: reported only. */
  limit: number | null;
  measure: () => Promise<{ ms: number; floorMs: number | null }> | { ms: number; floorMs: number | null };
}

/** Runs before anything is timed, so that the code is compiled. */
const WARM_UP_MS = 400;
const ROUNDS = 200;
/** Each timing lasts at least this long, so that the clock's grain does not count, and hardly longer, so that some fall between the turns of other programs. */
const LEAST_MS = 0.3;

function timesFor(work: () => unknown): number {
  for (let n = 1; ; n *= 2) {
    const from = performance.now();
    for (let i = 0; i < n; i += 1) work();
    if (performance.now() - from >= LEAST_MS) return n;
  }
}
const timed = (work: () => unknown, n: number): number => {
  const from = performance.now();
  for (let i = 0; i < n; i += 1) work();
  return (performance.now() - from) / n;
};

/**
 * Milliseconds of one call of each, measured turn by turn so that both meet the same machine; the least of all rounds,
 * which is what the code costs where nothing else runs.
 */
export function sideBySide(...works: (() => unknown)[]): number[] {
  for (const work of works) {
    const until = performance.now() + WARM_UP_MS;
    while (performance.now() < until) work();
  }
  const counts = works.map(timesFor);
  const least = works.map(() => Infinity);
  for (let r = 0; r < ROUNDS; r += 1) {
    works.forEach((work, i) => { least[i] = Math.min(least[i] as number, timed(work, counts[i] as number)); });
  }
  return least;
}

/** Rounds of work that takes long and waits for threads and disks. What threads cost hangs on how they happen to meet, so that the least of it is found later than the least of a clock. */
const LONG_ROUNDS = { clock: 15, processors: 100 } as const;

/** Milliseconds on the clock, or of the processors, all of this process's threads together, which is what a busy server has to give. */
const CLOCKS = {
  clock: () => performance.now(),
  processors: () => { const { user, system } = process.cpuUsage(); return (user + system) / 1000; },
};

/** As above for work that is waited for: the least of a few rounds, each a turn of every work, after one that does not count. */
export async function turnByTurn(by: keyof typeof CLOCKS, ...works: (() => Promise<unknown>)[]): Promise<number[]> {
  const now = CLOCKS[by], least = works.map(() => Infinity);
  for (let r = 0; r <= LONG_ROUNDS[by]; r += 1) {
    for (const [i, work] of works.entries()) {
      const from = now();
      await work();
      if (r > 0) least[i] = Math.min(least[i] as number, now() - from);
    }
  }
  return least;
}
