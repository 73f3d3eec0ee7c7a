"use client";
import { Link } from "@/lib/ui/link";
import { useRouter } from "next/navigation";
import { useRef, useState, type ChangeEvent, type DragEvent } from "react";
import type { Brought } from "@/lib/enquiry/bring-post";
import type { Result } from "@/lib/enquiry/caller";
import css from "./post.module.css";

interface Dropped { key: number; name: string; result: Result<Brought> | null }

const LOST: Result<never> = { ok: false, code: "unavailable", say: "The connection was lost while sending. Nothing is lost: try this one again." };

async function send(file: File): Promise<Result<Brought>> {
  const form = new FormData();
  form.append("file", file);
  try {
    const response = await fetch("/api/post", { method: "POST", body: form });
    return (await response.json()) as Result<Brought>;
  } catch {
    return LOST;
  }
}

/** Takes letters that were saved as files: dragged here or chosen, several at a time, one request each. What became of each stands beside its name. */
export function Drop() {
  const [dropped, setDropped] = useState<Dropped[]>([]);
  const [isOver, setIsOver] = useState(false);
  const [says, setSays] = useState("");
  const count = useRef(0);
  const line = useRef<Promise<unknown>>(Promise.resolve());
  const router = useRouter();

  const deliver = async (key: number, file: File) => {
    const result = await send(file);
    setDropped((all) => all.map((d) => (d.key === key ? { ...d, result } : d)));
    setSays(`${file.name}: ${result.ok ? result.value.says : result.say}`);
    router.refresh();
  };
  const add = (files: readonly File[]) => {
    const items = files.map((file) => ({ key: count.current++, file }));
    setDropped((all) => [...items.map(({ key, file }) => ({ key, name: file.name, result: null })), ...all]);
    for (const { key, file } of items) line.current = line.current.then(() => deliver(key, file));
  };
  const choose = (event: ChangeEvent<HTMLInputElement>) => {
    add([...(event.target.files ?? [])]);
    event.target.value = "";
  };
  const drop = (event: DragEvent) => {
    event.preventDefault();
    setIsOver(false);
    add([...event.dataTransfer.files]);
  };
  return (
    <section aria-label="Letters saved as files">
      <div className={css.drop} data-over={isOver || undefined} onDragOver={(e) => { e.preventDefault(); setIsOver(true); }} onDragLeave={() => setIsOver(false)} onDrop={drop}>
        <p>Drag letters here that a mail program saved as files (.eml), or choose them.</p>
        <input className="unseen" type="file" accept=".eml,message/rfc822" multiple id="letters" onChange={choose} />
        <label className="button quiet" htmlFor="letters">Choose letters</label>
      </div>
      {dropped.length > 0 && <ul className={css.dropped}>{dropped.map((d) => <Item key={d.key} dropped={d} />)}</ul>}
      <p className="unseen" role="status">{says}</p>
      <noscript><p className="small">Bringing letters here needs JavaScript.</p></noscript>
    </section>
  );
}

function Item({ dropped: { name, result } }: { dropped: Dropped }) {
  return (
    <li>
      <span className={css.file}><bdi>{name}</bdi></span>
      {result === null && <span>On its way …</span>}
      {result?.ok === false && <span><strong>Not taken.</strong> {result.say}</span>}
      {result?.ok && (
        <span>
          {result.value.says} {result.value.enquiry
            ? <Link href={`/desk/${result.value.enquiry.id}`}>Enquiry <span className="num">{result.value.enquiry.reference}</span></Link>
            : <Link href={`/desk/post/${result.value.postId}`}>Read it</Link>}
        </span>
      )}
    </li>
  );
}
