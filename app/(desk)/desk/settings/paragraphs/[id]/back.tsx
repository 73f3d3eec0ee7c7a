"use client";
import { useState, useTransition } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import { backToShipped } from "../actions";

/** Goes back to the shipped text; what was written stays among the versions. */
export function Back({ id, seen }: { id: string; seen: number }) {
  const [said, setSaid] = useState("");
  const [isGoing, start] = useTransition();
  const go = () => start(async () => {
    const result = await reach(() => backToShipped({ id, seen }));
    setSaid(result.ok ? "" : result.say);
  });
  return (
    <>
      <button type="button" className="button quiet" onClick={go} disabled={isGoing}>Back to the shipped text</button>
      <p role="status">{said}</p>
    </>
  );
}
