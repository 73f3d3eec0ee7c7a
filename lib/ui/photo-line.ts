import type { Refusal, Result } from "../enquiry/caller";
import type { PhotoView } from "../enquiry/views";
import type { PhotoKind } from "../trade/questions";

/** A photo on its way, or one that was not taken. */
export interface Sending {
  /** A UUID: sent again under it, a photo is taken once. */
  key: string;
  kind: PhotoKind;
  file: File;
  /** How much of it was sent, 0–1. */
  share: number;
  /** The connection was lost; it is tried again by itself. */
  isWaiting: boolean;
  /** Why it was not taken; null while it is on its way. */
  refused: Refusal | null;
  /** What would make it a better photo, seen on this device before it is with us; null when nothing, or not looked at yet. */
  remark: string | null;
}

export interface LineDoes {
  send(item: Sending, onProgress: (share: number) => void, signal: AbortSignal): Promise<Result<PhotoView>>;
  /** Ends when it may be worth trying again: after so many milliseconds, or sooner when the device is back on line. */
  pause(ms: number): Promise<void>;
  onKept(item: Sending, photo: PhotoView): void;
  onRefused(item: Sending, why: Refusal): void;
  onChange(items: readonly Sending[]): void;
}

/** Milliseconds between the tries of one photo whose connection is lost; after the last the line waits for the person. *elicited* */
export const PAUSES_MS = [1_000, 3_000, 8_000, 20_000] as const;

export type PhotoLine = ReturnType<typeof photoLine>;

/**
 * Sends photos one after the other, in the order they were chosen, so that a slow connection carries each whole. What is
 * refused for what it is stands aside; a lost connection holds the line, so that the order stays, and is tried again.
 */
export function photoLine(does: LineDoes) {
  let items: readonly Sending[] = [];
  let running = false;
  let current: { key: string; stop: AbortController } | null = null;

  const put = (next: readonly Sending[]) => {
    items = next;
    does.onChange(items);
  };
  const change = (key: string, to: Partial<Sending>) => put(items.map((s) => (s.key === key ? { ...s, ...to } : s)));
  const take = (key: string) => put(items.filter((s) => s.key !== key));
  const isThere = (key: string) => items.some((s) => s.key === key);

  const deliver = async (item: Sending): Promise<void> => {
    for (const pauseMs of [...PAUSES_MS, null]) {
      change(item.key, { isWaiting: false });
      const stop = new AbortController();
      current = { key: item.key, stop };
      const answer = await does.send(item, (share) => change(item.key, { share }), stop.signal);
      current = null;
      if (!isThere(item.key)) return;
      if (answer.ok) {
        take(item.key);
        return does.onKept(item, answer.value);
      }
      if (answer.code !== "unavailable" || pauseMs === null) {
        change(item.key, { refused: answer, isWaiting: false });
        return does.onRefused(item, answer);
      }
      change(item.key, { share: 0, isWaiting: true });
      await does.pause(pauseMs);
      if (!isThere(item.key)) return;
    }
  };
  const run = async () => {
    if (running) return;
    running = true;
    for (let next = nextOf(items); next; next = nextOf(items)) await deliver(next);
    running = false;
  };

  return {
    add(more: readonly Sending[]) {
      put([...items, ...more]);
      void run();
    },
    /** Tries one again that was not taken. */
    again(key: string) {
      change(key, { refused: null, share: 0 });
      void run();
    },
    /** Leaves one out, on its way or not. */
    putAside(key: string) {
      if (current?.key === key) current.stop.abort();
      take(key);
      void run();
    },
    remark: (key: string, remark: string | null) => change(key, { remark }),
  };
}

/** The first that waits; none while one before it lost its connection, so that the order stays. */
function nextOf(items: readonly Sending[]): Sending | undefined {
  const first = items.find((s) => s.refused === null || s.refused.code === "unavailable");
  return first?.refused === null ? first : undefined;
}
