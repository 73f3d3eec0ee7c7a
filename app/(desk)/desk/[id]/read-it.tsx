import { useId } from "react";
import css from "./letter-desk.module.css";

/** Where the client wrote and the letter has no place for an answer: the person who approves it says that they have read it. */
export function ReadIt({ name, messages, isRead, say, error }: { name: string; messages: number; isRead: boolean; say: (isRead: boolean) => void; error: string | null }) {
  const id = useId();
  if (messages === 0) return null;
  return (
    <div className={`${css.open} no-print`} role="group" aria-labelledby={`${id}-why`}>
      <p id={`${id}-why`}><b><bdi>{name}</bdi> wrote {messages === 1 ? "" : `${messages} times `}while this letter was being written.</b> It stands above. Answer it in the letter if it wants an answer.</p>
      {error && <p className="error" id={`${id}-error`}>{error}</p>}
      <label className={css.tick}>
        <input type="checkbox" checked={isRead} aria-invalid={error !== null || undefined} aria-describedby={error ? `${id}-error` : undefined} onChange={(e) => say(e.target.checked)} />
        <span>I have read it: the letter answers it, or nothing in it wants an answer</span>
      </label>
    </div>
  );
}
