"use client";
import { useRouter } from "next/navigation";
import { useId, useRef, useState, useTransition, type FormEvent } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import field from "@/lib/ui/field.module.css";
import { switchTo } from "../actions";
import css from "../tables.module.css";

/** Switches one reagent on, once it is ticked that it was assessed here, or off. */
export function Switch({ id, name, isOn, assessed }: { id: string; name: string; isOn: boolean; assessed: readonly string[] }) {
  const [said, setSaid] = useState("");
  const [isBusy, start] = useTransition();
  const status = useRef<HTMLParagraphElement>(null);
  const tick = useId();
  const router = useRouter();
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const isAssessed = new FormData(event.currentTarget).get("assessed") === "yes";
    start(async () => {
      const result = await reach(() => switchTo({ reagent: id, to: isOn ? "off" : "on", isAssessed }));
      setSaid(result.ok ? "" : result.say);
      if (!result.ok) status.current?.focus();
      router.refresh();
    });
  };
  return (
    <form onSubmit={submit} className={css.switch}>
      {!isOn && (
        <div className={`field ${field.tick}`}>
          <label htmlFor={tick}>
            <input type="checkbox" id={tick} name="assessed" value="yes" aria-describedby={`${tick}-settled`} />
            <span>I have assessed this for our workshop and written it down.</span>
          </label>
          <div id={`${tick}-settled`} className={`small ${css.settled}`}>It settles:<ul>{assessed.map((a) => <li key={a}>{a}</li>)}</ul></div>
        </div>
      )}
      <button className="button quiet" disabled={isBusy}>{isOn ? "Switch off" : "Switch on"}<span className="unseen">: {name}</span></button>
      <p ref={status} role="status" tabIndex={-1} className={css.said}>{said}</p>
    </form>
  );
}
