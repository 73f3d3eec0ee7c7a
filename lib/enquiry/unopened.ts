import "server-only";
import { NOT_A_PHOTO, NOT_TAKEN } from "../photo/sentences";
import type { Answer, Audit, Photo, Post } from "../store/database";
import { fromPost, takenIn } from "./messages";
import type { UnopenedView } from "./views";

const WHYS: readonly string[] = [...Object.values(NOT_A_PHOTO), ...Object.values(NOT_TAKEN)];

interface From {
  submittedAt: Date;
  posts: readonly Pick<Post, "id" | "leftOut">[];
  /** The oldest first. */
  audit: readonly Pick<Audit, "at" | "action" | "detail">[];
  answers: readonly Pick<Answer, "from">[];
  photos: readonly Pick<Photo, "createdAt">[];
}

/**
 * Pictures that came by the client's own mail and could not be opened as photos, while no photo has come since: the message keeps each
 * as it came. Those of somebody else's message are not asked for again.
 */
export function unopenedPhotos({ submittedAt, posts, audit, answers, photos }: From): UnopenedView[] {
  const taken = takenIn(audit);
  const newest = Math.max(...photos.map((p) => p.createdAt.getTime()));
  return posts
    .filter(({ id }) => answers.every((a) => a.from !== fromPost(id)) && newest <= (taken.find((t) => t.postId === id)?.at ?? submittedAt).getTime())
    .flatMap(({ id, leftOut }) => namesIn(leftOut).map((name) => ({ postId: id, name })));
}

/** The names of pictures that could not be opened, from what is told of as left out: "name: why", a line each. */
function namesIn(leftOut: string | null): string[] {
  return (leftOut ?? "").split("\n").flatMap((line) => {
    const why = WHYS.find((w) => line.endsWith(`: ${w}`));
    return why === undefined ? [] : line.slice(0, -`: ${why}`.length);
  });
}
