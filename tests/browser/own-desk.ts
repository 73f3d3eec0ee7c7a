import { test } from "./fixtures";
import { settledDesk, type Wishes } from "./people";

/** How long a desk may take to start and its people to come in. */
const SETTLE_MS = 300_000;
type Settled = Awaited<ReturnType<typeof settledDesk>>;

/** A desk of a file's own, begun before its tests and ended after them. `take` is handed the desk and the sessions of its people. */
export function ownDesk(take: (settled: Settled) => void, wishes: Wishes = {}): void {
  let settled: Settled | undefined;
  test.beforeAll(async ({ browser, database }) => {
    test.setTimeout(SETTLE_MS);
    settled = await settledDesk({ browser, database }, wishes);
    take(settled);
  });
  test.afterAll(() => settled?.desk.stop());
}
