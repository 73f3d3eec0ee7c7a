"use client";
import { useEffect, useState } from "react";
import type { LabelReadingView } from "../enquiry/label-view";
import type { LabelDeeds } from "./label-form";

/** Milliseconds until the page looks again, longer each time up to the last. Elicited: a label takes a second or some. */
const LOOK_AGAIN_MS = [800, 1_200, 2_000, 3_000, 5_000] as const;

/** How the reading of a label stands, looked at again as long as it is being read. `take`: what came of something done on this page. */
export function useLabelReading({ photoId, kept, look }: { photoId: string; kept: LabelReadingView | null; look: LabelDeeds["look"] }) {
  const [own, setOwn] = useState<LabelReadingView | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [looks, setLooks] = useState(0);
  const reading = own ?? kept;
  const isDue = reading === null || reading.state === "reading";
  useEffect(() => {
    if (!isDue || trouble !== null) return;
    let isOver = false;
    const wait = reading === null && looks === 0 ? 0 : LOOK_AGAIN_MS[Math.min(looks, LOOK_AGAIN_MS.length - 1)];
    const timer = setTimeout(async () => {
      // A lost connection comes back; the page looks again.
      const result = await look(photoId).catch(() => null);
      if (isOver) return;
      if (result?.ok) setOwn(result.value);
      else if (result) setTrouble(result.say);
      setLooks((n) => n + 1);
    }, wait);
    return () => { isOver = true; clearTimeout(timer); };
  }, [isDue, trouble, looks, look, photoId, reading]);
  const take = (value: LabelReadingView) => { setOwn(value); setTrouble(null); setLooks(0); };
  return { reading, trouble, take };
}
