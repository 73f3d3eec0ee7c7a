"use client";
import { lazy, Suspense, useEffect, useRef, useState } from "react";
import { useSay } from "./browser-words";
import type { AskedPhoto } from "./photo-picker";

const Picker = lazy(() => import("./photo-picker").then((m) => ({ default: m.PhotoPicker })));
const NONE = [] as const;

/** The places for photos, fetched when somebody first opens the fold they lie in. */
export function AddPhotos({ kinds, fields }: { kinds: readonly AskedPhoto[]; fields: Readonly<Record<string, string>> }) {
  const say = useSay();
  const here = useRef<HTMLDivElement>(null);
  const [isOpen, setIsOpen] = useState(false);
  useEffect(() => {
    const fold = here.current?.closest("details");
    const look = () => setIsOpen((was) => was || fold?.open === true);
    look();
    fold?.addEventListener("toggle", look);
    return () => fold?.removeEventListener("toggle", look);
  }, []);
  return <div ref={here}>{isOpen && <Suspense fallback={<p className="small">{say("page.moment")}</p>}><Picker kinds={kinds} photos={NONE} fields={fields} /></Suspense>}</div>;
}
