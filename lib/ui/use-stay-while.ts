"use client";
import { useEffect } from "react";

/** The browser's own question before the page is closed or read anew, while something would be lost by it. */
export function useStayWhile(isNeeded: boolean): void {
  useEffect(() => {
    if (!isNeeded) return;
    const ask = (e: BeforeUnloadEvent) => e.preventDefault();
    window.addEventListener("beforeunload", ask);
    return () => window.removeEventListener("beforeunload", ask);
  }, [isNeeded]);
}
