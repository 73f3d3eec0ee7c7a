"use client";
import { useRouter } from "next/navigation";
import { useRef, useState, useTransition } from "react";
import { reach } from "@/app/(desk)/_parts/reach";
import type { Result } from "@/lib/enquiry/caller";
import type { StaffView } from "@/lib/staff/people";
import { changeRole, disable, restore } from "./actions";
import css from "./people.module.css";
import { ROLE_IDS, ROLES, type RoleId } from "./schema";

/** One person who works here. What was refused is said beside them, and nothing changes. */
export function Person({ person, isSelf, since }: { person: StaffView; isSelf: boolean; since: string }) {
  const [said, setSaid] = useState("");
  const [isBusy, start] = useTransition();
  const status = useRef<HTMLParagraphElement>(null);
  const router = useRouter();
  const run = (call: () => Promise<Result<null>>, done: string) => start(async () => {
    const result = await reach(call);
    setSaid(result.ok ? done : result.say);
    status.current?.focus();
    router.refresh();
  });
  const { id, name, role, disabled } = person;
  return (
    <li className={css.person}>
      <div className={css.who}>
        <b><bdi>{name}</bdi></b>{isSelf && " (you)"}
        <small>{person.email}<br />{disabled ? "cannot sign in" : `since ${since}`}</small>
      </div>
      <label className={css.role}>
        <span className="unseen">Role of {name}</span>
        <select value={role} disabled={isBusy || disabled} onChange={(e) => { const to = e.target.value as RoleId; run(() => changeRole({ staffId: id, role: to }), `${name} is now ${ROLES[to].name.toLowerCase()}.`); }}>
          {ROLE_IDS.map((r) => <option key={r} value={r}>{ROLES[r].name}</option>)}
        </select>
      </label>
      {disabled
        ? <button type="button" className={css.plain} disabled={isBusy} onClick={() => run(() => restore(id), `${name} can sign in again.`)}>Let back in <span className="unseen">{name}</span></button>
        : <button type="button" className={css.plain} disabled={isBusy} onClick={() => run(() => disable(id), `${name} is signed out everywhere and cannot sign in.`)}>Shut out <span className="unseen">{name}</span></button>}
      <p ref={status} role="status" tabIndex={-1} className={css.said}>{said}</p>
    </li>
  );
}
