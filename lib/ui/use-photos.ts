"use client";
import { useRef, useState } from "react";
import type { Refusal } from "../enquiry/caller";
import type { PhotoView } from "../enquiry/views";
import type { PhotoKind } from "../trade/questions";
import { sendPhoto } from "./send-photo";

/** A photo on its way, or one that was not taken. */
export interface Sending {
  key: number;
  kind: PhotoKind;
  file: File;
  /** How much of it was sent, 0–1. */
  share: number;
  /** Why it was not taken; null while it is on its way. */
  refused: Refusal | null;
}
export type RemovePhoto = (photoId: string) => Promise<{ ok: true } | Refusal>;

/**
 * The photos of a page: those kept, and those on their way, one after the other so that a slow line carries each.
 * What is refused stays in the list with its reason until it is tried again or put aside.
 */
export function usePhotos(kept: readonly PhotoView[], options: { fields: Readonly<Record<string, string>>; remove: RemovePhoto | undefined; onChange: () => void }) {
  const [added, setAdded] = useState<PhotoView[]>([]);
  const [gone, setGone] = useState<string[]>([]);
  const [sending, setSending] = useState<Sending[]>([]);
  const [says, setSays] = useState("");
  const line = useRef<Promise<unknown>>(Promise.resolve());
  const count = useRef(0);

  const change = (key: number, to: Partial<Sending>) => setSending((all) => all.map((s) => (s.key === key ? { ...s, ...to } : s)));
  const putAside = (key: number) => setSending((all) => all.filter((s) => s.key !== key));

  const deliver = async ({ key, kind, file }: Sending) => {
    const answer = await sendPhoto(file, { kind, ...options.fields }, (share) => change(key, { share }));
    if (!answer.ok) {
      change(key, { refused: answer });
      setSays(`${file.name} was not taken. ${answer.say}`);
      return;
    }
    setAdded((all) => [...all, answer.value]);
    putAside(key);
    setSays(`${file.name} is with us.`);
    options.onChange();
  };
  const queue = (item: Sending) => { line.current = line.current.then(() => deliver(item)); };

  const add = (kind: PhotoKind, files: readonly File[]) => {
    const items = files.map((file) => ({ key: count.current++, kind, file, share: 0, refused: null }));
    setSending((all) => [...all, ...items]);
    items.forEach(queue);
  };
  const again = (item: Sending) => {
    change(item.key, { refused: null, share: 0 });
    queue(item);
  };
  const remove = async (photoId: string) => {
    const answer = await options.remove?.(photoId);
    if (answer?.ok) setGone((all) => [...all, photoId]);
    setSays(answer?.ok ? "The photo is taken away." : (answer?.say ?? ""));
    options.onChange();
  };

  const known = new Map([...kept, ...added].map((p) => [p.id, p]));
  return { photos: [...known.values()].filter((p) => !gone.includes(p.id)), sending, says, add, again, putAside, remove };
}
