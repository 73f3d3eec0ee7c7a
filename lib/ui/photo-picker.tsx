"use client";
import { useRouter } from "next/navigation";
import type { ChangeEvent, ReactNode } from "react";
import type { ClientSpots as KeptSpots } from "../enquiry/measured-views";
import type { PhotoView } from "../enquiry/views";
import type { PhotoKind } from "../trade/questions";
import { useSay } from "./browser-words";
import type { LabelDeeds } from "./label-form";
import { LabelReading } from "./label-reading";
import styles from "./photo-picker.module.css";
import { ClientSpots, photosOfChange, type ClientSpotsProps } from "./marking/client-spots";
import type { Sending } from "./photo-line";
import { usePhotos, type RemovePhoto } from "./use-photos";

/** `fills`: what is asked for should fill the picture. `white`: it may be white by itself. */
export interface AskedPhoto { kind: PhotoKind; ask: string; hint: string; fills: boolean; white: boolean; picture: ReactNode }

/** What phones and cameras write; the ending too, because some browsers do not know HEIC by its type. */
const ACCEPT = "image/jpeg,image/png,image/webp,image/heic,image/heif,.heic,.heif";
const NO_FIELDS = {};

/**
 * The photos asked for, one place each. Every photo is sent as soon as it is chosen, in a request of its own: one
 * that is refused says why beside itself and holds up nothing else. Without `remove`, what was sent stays sent.
 */
export function PhotoPicker({ kinds, photos: kept, fields = NO_FIELDS, remove, spots, labels }: {
  kinds: readonly AskedPhoto[];
  photos: readonly PhotoView[];
  /** Sent along with every photo. */
  fields?: Readonly<Record<string, string>>;
  remove?: RemovePhoto;
  /** Where a change may be shown in a photo: what was shown already, and the way to keep it and take it back. */
  spots?: SpotsOfPhotos;
  /** Where given, a photo of the label is read and its words asked about. */
  labels?: LabelDeeds;
}) {
  const router = useRouter();
  const say = useSay();
  const { photos, stayed, sending, says, ...act } = usePhotos(kept, { fields, remove, onChange: () => router.refresh() });
  // A page may show the places of several rugs.
  const ofRug = fields["rugId"] ? `-${fields["rugId"]}` : "";
  const placeOf = (kind: PhotoKind) => `photo-${kind}${ofRug}`;
  // The button that was pressed is gone: whoever works by keyboard or ear goes on at the same place.
  const stayAt = (kind: PhotoKind) => document.getElementById(placeOf(kind))?.focus();
  const telling = photosOfChange(photos).map((p) => p.id);
  const onTheirWay = sending.filter((s) => !s.refused).length;
  return (
    <div className={styles.picker}>
      <noscript><p>{say("picker.no-script")}</p></noscript>
      {kinds.map((asked) => (
        <section key={asked.kind} className={styles.place} aria-labelledby={placeOf(asked.kind)}>
          <div className={styles.asked}>
            {asked.picture}
            <div>
              <h2 id={placeOf(asked.kind)} tabIndex={-1}>{asked.ask}</h2>
              <p className="small">{asked.hint}</p>
            </div>
          </div>
          <Kept photos={photos.filter((p) => p.kind === asked.kind)} stayed={stayed} what={asked.ask} remove={remove && (async (id) => { if (await act.remove(id)) stayAt(asked.kind); })} spots={spots} telling={telling} labels={asked.kind === "label" ? labels : undefined} onChange={() => router.refresh()} />
          <OnTheWay sending={sending.filter((s) => s.kind === asked.kind)} again={(key) => { act.again(key); stayAt(asked.kind); }} putAside={(key) => { act.putAside(key); stayAt(asked.kind); }} />
          <Inputs asked={asked} ofRug={ofRug} add={(files) => act.add(asked, files)} />
        </section>
      ))}
      <p className="unseen" role="status">{says}</p>
      {onTheirWay > 0 && <p className={styles.wait}>{onTheirWay === 1 ? say("picker.one-sending") : say("picker.some-sending", { n: onTheirWay })}</p>}
    </div>
  );
}

function Inputs({ asked, ofRug, add }: { asked: AskedPhoto; ofRug: string; add: (files: File[]) => void }) {
  const say = useSay();
  const take = (event: ChangeEvent<HTMLInputElement>) => {
    add([...(event.target.files ?? [])]);
    // The same file can be chosen again after it was refused or taken away.
    event.target.value = "";
  };
  return (
    <div className={styles.inputs}>
      <span className={styles.camera}>
        <input className="unseen" type="file" accept={ACCEPT} capture="environment" id={`camera-${asked.kind}${ofRug}`} onChange={take} />
        <label className="button quiet" htmlFor={`camera-${asked.kind}${ofRug}`}>{say("picker.take")}<span className="unseen">{say("picker.of", { what: asked.ask })}</span></label>
      </span>
      <span>
        <input className="unseen" type="file" accept={ACCEPT} multiple id={`gallery-${asked.kind}${ofRug}`} onChange={take} />
        <label className="button quiet" htmlFor={`gallery-${asked.kind}${ofRug}`}>{say("picker.choose")}<span className="unseen">{say("picker.of", { what: asked.ask })}</span></label>
      </span>
    </div>
  );
}

export type SpotsOfPhotos = Pick<ClientSpotsProps, "keep" | "takeBack"> & { kept: KeptSpots };

function Kept({ photos, stayed, what, remove, spots, telling, labels, onChange }: {
  photos: readonly PhotoView[]; stayed: Readonly<Record<string, string>>; what: string; remove: ((id: string) => Promise<void>) | undefined; spots: SpotsOfPhotos | undefined; telling: readonly string[]; labels: LabelDeeds | undefined; onChange: () => void;
}) {
  const say = useSay();
  if (photos.length === 0) return null;
  return (
    <ul className={styles.kept}>
      {photos.map((photo, k) => (
        <li key={photo.id}>
          <img src={`/photos/${photo.id}/320`} alt={say("picker.numbered", { what, number: k + 1 })} width={photo.width} height={photo.height} />
          <div>
            <p className="small">{say("picker.kept")}{photo.remark && ` ${photo.remark}`}</p>
            {stayed[photo.id] && <p className={styles.refused} role="alert">{stayed[photo.id]}</p>}
            {remove && <button type="button" className={styles.plain} onClick={() => void remove(photo.id)}>{say("picker.take-away")}<span className="unseen">{say("picker.of", { what: say("picker.numbered", { what, number: k + 1 }) })}</span></button>}
          </div>
          {spots && telling.includes(photo.id) && <ClientSpots photo={photo} alt={what} kept={spots.kept[photo.id]} keep={spots.keep} takeBack={spots.takeBack} onChange={onChange} />}
          {labels && <div className={styles.label}><LabelReading photo={photo} deeds={labels} mayAnswer={photo.label?.by !== "staff"} /></div>}
        </li>
      ))}
    </ul>
  );
}

function OnTheWay({ sending, again, putAside }: { sending: readonly Sending[]; again: (key: string) => void; putAside: (key: string) => void }) {
  const say = useSay();
  if (sending.length === 0) return null;
  return (
    <ul className={styles.sending}>
      {sending.map((item) => (
        <li key={item.key}>
          <span className={styles.name}><bdi>{item.file.name}</bdi></span>
          {item.refused ? (
            <>
              <p className={styles.refused}><strong>{say("picker.not-taken")}</strong> {item.refused.say}</p>
              {item.refused.code === "unavailable" && <button type="button" className={styles.plain} onClick={() => again(item.key)}>{say("picker.again")}<span className="unseen">{say("picker.of", { what: item.file.name })}</span></button>}
            </>
          ) : (
            <>
              <progress max={1} value={item.share} aria-label={say("picker.sending", { name: item.file.name })} />
              {item.isWaiting && <p className={styles.seen} role="status">{say("picker.waiting")}</p>}
              {item.remark && <p className={styles.seen}>{item.remark}</p>}
            </>
          )}
          <button type="button" className={styles.plain} onClick={() => putAside(item.key)}>{say(item.refused ? "picker.clear" : "picker.leave-out")}<span className="unseen">{say("picker.of", { what: item.file.name })}</span></button>
        </li>
      ))}
    </ul>
  );
}
