"use client";
import { useRouter } from "next/navigation";
import type { ClientSpots as KeptSpots } from "@/lib/enquiry/measured-views";
import type { PhotoView } from "@/lib/enquiry/views";
import { ClientSpots, photosOfChange } from "@/lib/ui/marking/client-spots";
import { showSpots, takeSpotsBack } from "./actions";
import styles from "./client-page.module.css";

interface Props {
  photos: readonly PhotoView[];
  spots: KeptSpots;
  mayShow: boolean;
  /** Each photo's number and what it shows, by its id. */
  names: Readonly<Record<string, string>>;
  /** That a clean and a changed spot were shown. */
  shown: string;
}

/** The client's photos, the spots they showed in them, and where more can be shown, as long as anything is awaited. */
export function ShownPhotos({ photos, spots, mayShow, names, shown }: Props) {
  const router = useRouter();
  const asked = photosOfChange(photos);
  // What they showed stands there in whichever photo it is, also once another one would be asked for.
  const marked = photos.filter((p) => spots[p.id] || (mayShow && asked.includes(p)));
  return (
    <>
      <div className={styles.photos}>
        {photos.map(({ id, width, height }) => <img key={id} src={`/photos/${id}/320`} alt={names[id] ?? ""} width={width} height={height} loading="lazy" />)}
      </div>
      {marked.map((photo) => {
        const name = names[photo.id] ?? "";
        return mayShow
          ? <div key={photo.id} className="no-print"><ClientSpots photo={photo} alt={name} name={name} kept={spots[photo.id]} keep={showSpots} takeBack={takeSpotsBack} onChange={() => router.refresh()} /></div>
          : <p key={photo.id} className={styles.shown}><img src={`/photos/${photo.id}/320`} alt="" width={photo.width} height={photo.height} /><span>{shown} <small>{name}</small></span></p>;
      })}
    </>
  );
}
