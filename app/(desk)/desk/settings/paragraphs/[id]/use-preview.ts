"use client";
import { useCallback, useEffect, useRef, useState } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import type { ParagraphPreview } from "@/lib/enquiry/paragraph-views";
import { tryParagraph } from "../actions";

/** So long nothing may be typed before the paragraph is tried. Milliseconds, elicited. */
const IDLE_MS = 500;

const fieldsOf = (form: HTMLFormElement) =>
  Object.fromEntries([...new FormData(form)].filter((e): e is [string, string] => typeof e[1] === "string" && !e[0].startsWith("$ACTION")));

/** Tries what stands in the form on past enquiries: at once when the page opens or a version is kept (`seen`), and whenever the typing rests. Late answers are dropped. */
export function usePreview({ id, seen }: { id: string | null; seen: number }, form: () => HTMLFormElement | null) {
  const [found, setFound] = useState<ParagraphPreview | null>(null);
  const [say, setSay] = useState("");
  const [isTrying, setTrying] = useState(false);
  const turn = useRef(0);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);

  const tryNow = useCallback(async () => {
    const at = form();
    if (!at) return;
    const mine = ++turn.current;
    setTrying(true);
    const result = await reach(() => tryParagraph({ id, input: fieldsOf(at) }));
    if (mine !== turn.current) return;
    setTrying(false);
    setSay(result.ok ? "" : result.say);
    if (result.ok) setFound(result.value);
  }, [id, form]);
  const newest = useRef(tryNow);
  useEffect(() => { newest.current = tryNow; });

  const tryLater = useCallback(() => {
    clearTimeout(timer.current);
    timer.current = setTimeout(() => void newest.current(), IDLE_MS);
  }, []);
  useEffect(() => {
    tryLater();
    return () => clearTimeout(timer.current);
  }, [tryLater, seen]);
  return { found, isTrying, say, tryLater };
}
