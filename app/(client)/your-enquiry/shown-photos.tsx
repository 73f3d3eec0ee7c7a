"use client";
import { useRouter } from "next/navigation";
import type { ClientSpots as KeptSpots, PhotoView } from "@/lib/enquiry/views";
import type { PhotoKind } from "@/lib/trade/questions";
import { ClientSpots, photosOfChange } from "@/lib/ui/marking/client-spots";
import { showSpots, takeSpotsBack } from "./actions";
import styles from "./client-page.module.css";

/** The client's photos; in those of the rug's face a clean and a changed spot can be shown, as long as anything is awaited. */
export function ShownPhotos({ photos, spots, mayShow, alts }: { photos: readonly PhotoView[]; spots: KeptSpots; mayShow: boolean; alts: Readonly<Record<PhotoKind, string>> }) {
  const router = useRouter();
  const asked = mayShow ? photosOfChange(photos) : [];
  return (
    <>
      <div className={styles.photos}>
        {photos.map((photo) => <img key={photo.id} src={`/photos/${photo.id}/320`} alt={alts[photo.kind]} width={photo.width} height={photo.height} loading="lazy" />)}
      </div>
      {asked.map((photo) => <div key={photo.id} className="no-print"><ClientSpots photo={photo} alt={alts[photo.kind]} kept={spots[photo.id]} keep={showSpots} takeBack={takeSpotsBack} onChange={() => router.refresh()} /></div>)}
    </>
  );
}
