"use client";
import { useRouter } from "next/navigation";
import { useEffect } from "react";

const EVERY_MS = 60_000;

/** Fetches the page's data anew each minute while it is looked at, and when it is looked at again. */
export function KeepFresh() {
  const router = useRouter();
  useEffect(() => {
    const fetchAnew = () => document.visibilityState === "visible" && router.refresh();
    const timer = setInterval(fetchAnew, EVERY_MS);
    document.addEventListener("visibilitychange", fetchAnew);
    return () => {
      clearInterval(timer);
      document.removeEventListener("visibilitychange", fetchAnew);
    };
  }, [router]);
  return null;
}
