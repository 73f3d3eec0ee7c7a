"use client";
import { useEffect, useState } from "react";
import type { Refusal } from "../enquiry/caller";
import type { PhotoView } from "../enquiry/views";
import type { PhotoKind } from "../trade/questions";
import { useRetell, useSay } from "./browser-words";
import { photoLooker } from "./look-at-photo";
import { photoLine, type PhotoLine, type Sending } from "./photo-line";
import { pause, sendPhoto } from "./send-photo";
import { useStayWhile } from "./use-stay-while";

export type RemovePhoto = (photoId: string) => Promise<{ ok: true } | Refusal>;
interface Options { fields: Readonly<Record<string, string>>; remove: RemovePhoto | undefined; onChange: () => void }

/**
 * The photos of a page: those kept, and those on their way. What is refused stays in the list with its reason until it is
 * tried again or put aside. Each is looked at on the device while it is sent, so that whoever stands by the rug hears at once
 * what would make it better.
 */
export function usePhotos(kept: readonly PhotoView[], options: Options) {
  const say = useSay();
  const retell = useRetell();
  const [added, setAdded] = useState<PhotoView[]>([]);
  const [gone, setGone] = useState<string[]>([]);
  /** Why a photo could not be taken away, by its id. */
  const [stayed, setStayed] = useState<Readonly<Record<string, string>>>({});
  const [sending, setSending] = useState<readonly Sending[]>([]);
  const [says, setSays] = useState("");
  const [looker] = useState(photoLooker);
  useEffect(() => looker.end, [looker]);
  // Going on to the next question loses nothing: the line goes on.
  useStayWhile(sending.some((s) => !s.refused));
  const [line] = useState<PhotoLine>(() => photoLine({
    send: (item, onProgress, signal) => sendPhoto(item.file, { kind: item.kind, key: item.key, ...options.fields }, { onProgress, signal, lost: say("picker.lost") }),
    pause,
    onKept: (item, photo) => {
      setAdded((all) => [...all, photo]);
      setSays(say("picker.is-with-us", { name: item.file.name }));
      options.onChange();
    },
    onRefused: (item, why) => setSays(say("picker.was-not-taken", { name: item.file.name, why: why.say })),
    onChange: setSending,
  }));

  // In the order they came, each as it was told last: the twin of a photo that was taken away is a twin no longer.
  const known = new Map([...kept, ...added, ...kept].map((p) => [p.id, p]));
  const photos = [...known.values()].filter((p) => !gone.includes(p.id));

  const add = ({ kind, fills, white }: { kind: PhotoKind; fills: boolean; white: boolean }, files: readonly File[]) => {
    const items = files.map((file) => ({ key: newKey(), kind, file, share: 0, isWaiting: false, refused: null, remark: null }));
    line.add(items);
    for (const { key, file } of items) {
      void looker.look(file, { fills, white, others: photos.filter((p) => p.remark === null).map((p) => p.likeness) }).then((remark) => {
        if (!remark) return;
        line.remark(key, retell(remark));
        setSays(say("picker.remark", { name: file.name, remark: retell(remark) }));
      });
    }
  };
  /** Whether it is gone. */
  const remove = async (photoId: string): Promise<boolean> => {
    const answer = await options.remove?.(photoId).catch(() => ({ ok: false as const, say: say("picker.not-taken-away") }));
    if (!answer) return false;
    if (answer.ok) setGone((all) => [...all, photoId]);
    setStayed(({ [photoId]: _, ...others }) => (answer.ok ? others : { ...others, [photoId]: answer.say }));
    if (answer.ok) setSays(say("picker.taken-away"));
    options.onChange();
    return answer.ok;
  };
  return { photos, stayed, sending, says, add, again: line.again, putAside: line.putAside, remove };
}

/** A UUID (version 4). By random bytes, because `randomUUID` is missing where the page came over plain HTTP. */
function newKey(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  bytes[6] = (bytes[6]! & 0x0f) | 0x40;
  bytes[8] = (bytes[8]! & 0x3f) | 0x80;
  const hex = Array.from(bytes, (b) => b.toString(16).padStart(2, "0")).join("");
  return hex.replace(/^(.{8})(.{4})(.{4})(.{4})/, "$1-$2-$3-$4-");
}
