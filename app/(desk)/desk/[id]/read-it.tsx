import { useId } from "react";
import css from "./letter-desk.module.css";

/** Where the client wrote and the letter has no place for an answer: the person who approves it says that they have read it. */
export function ReadIt({ name, messages, others, isRead, say, error }: { name: string; /** Of the client's own. */ messages: number; /** From other addresses. */ others: number; isRead: boolean; say: (isRead: boolean) => void; error: string | null }) {
  const id = useId();
  if (messages + others === 0) return null;
  return (
    <div className={`${css.open} no-print`} role="group" aria-labelledby={`${id}-why`}>
      <p id={`${id}-why`}><b><Who name={name} messages={messages} others={others} /> while this letter was being written.</b> {messages + others === 1 ? ONE : SEVERAL}</p>
      {error && <p className="error" id={`${id}-error`}>{error}</p>}
      <label className={css.tick}>
        <input type="checkbox" checked={isRead} aria-invalid={error !== null || undefined} aria-describedby={error ? `${id}-error` : undefined} onChange={(e) => say(e.target.checked)} />
        <span>I have read it: the letter answers it, or nothing in it wants an answer</span>
      </label>
    </div>
  );
}

const ONE = "It stands above. Answer it in the letter if it wants an answer.";
const SEVERAL = "All of it stands above. Answer in the letter what wants an answer.";
const wrote = (times: number) => (times === 1 ? "wrote" : `wrote ${times} times`);

function Who({ name, messages, others }: { name: string; messages: number; others: number }) {
  if (messages === 0) return <>Somebody with another address {wrote(others)}</>;
  return <><bdi>{name}</bdi> {wrote(messages)}{others > 0 && `, and somebody with another address ${wrote(others)},`}</>;
}
