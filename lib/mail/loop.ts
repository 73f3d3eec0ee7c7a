import "server-only";
import { deliverDue } from "./deliver";
import type { OnFailed } from "./record";

/** How often the outbox is looked at when nobody pokes. */
const POLL_MS = 2_000;
/** So many letters are handed over beside each other: a server may be silent for minutes after one of them, and the others do not wait for it. Elicited. */
const AT_ONCE = 3;
/** After a run that broke, for instance because the database was away. */
const AFTER_ERROR_MS = 10_000;

interface Delivery { poke(): void; stop(): Promise<void> }
// On globalThis: the server bundles its start-up hook and its routes apart, and one loop must serve both.
const kept = globalThis as { plainpileDelivery?: Delivery };

/** Hands over what is due, one letter after the other, and looks again after a pause or when poked; `stop` ends it after its letter. */
function lane(onFailed: OnFailed): Delivery {
  const stop = new AbortController();
  let wake = () => {};
  let poked = false;
  const pause = (ms: number) => new Promise<void>((resume) => {
    if (poked || stop.signal.aborted) return resume();
    const timer = setTimeout(resume, ms);
    timer.unref();
    wake = () => { clearTimeout(timer); resume(); };
  });
  const once = () => deliverDue(new Date(), { stop: stop.signal, onFailed }).then(() => POLL_MS, (error: Error) => {
    console.error(JSON.stringify({ level: "error", event: "delivery failed", message: error.message }));
    return AFTER_ERROR_MS;
  });
  const run = async () => {
    while (!stop.signal.aborted) {
      poked = false;
      await pause(await once());
    }
  };
  const running = run();
  return {
    poke: () => { poked = true; wake(); },
    stop: () => { stop.abort(); wake(); return running; },
  };
}

/** Lanes beside each other, each with letters that it has claimed. */
function begin(onFailed: OnFailed): Delivery {
  const lanes = Array.from({ length: AT_ONCE }, () => lane(onFailed));
  return {
    poke: () => lanes.forEach((l) => l.poke()),
    stop: async () => void (await Promise.all(lanes.map((l) => l.stop()))),
  };
}

/** Starts the one loop of this process that delivers what is due, and tells of what fails for good; a second call changes nothing. */
export function startDelivery(onFailed: OnFailed): void {
  kept.plainpileDelivery ??= begin(onFailed);
}

/** Looks at the outbox now. Without a loop in this process, the one of another finds the letter at its next look. */
export const pokeDelivery = (): void => kept.plainpileDelivery?.poke();

/** Ends the loop after the letters that are on their way. */
export async function stopDelivery(): Promise<void> {
  const delivery = kept.plainpileDelivery;
  delete kept.plainpileDelivery;
  await delivery?.stop();
}
