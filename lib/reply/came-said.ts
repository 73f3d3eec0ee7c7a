import type { Came, Moved } from "./facts";

const hasMoved = ({ changed, gone }: Moved): boolean => changed.length + gone.length > 0;
/** Nothing of the last letter moved or waits: there is only more to say, if anything. */
const movesNothing = (moved: Moved): boolean => !hasMoved(moved) && moved.waits.length === 0;

/** What came since a letter of ours and what of that letter moved, as facts by name: each holds where it is anything at all. None in a first letter. */
export const cameSaid = (came: Came | null) => {
  const moved = came?.moved;
  const isOnlyMore = moved && movesNothing(moved) && !came.unchanged;
  const isInspected = came?.inspected !== undefined;
  return {
    came: came && (came.message || came.answers || came.photos > 0), tested: came?.tested,
    changed: moved?.changed.length, gone: moved?.gone.length, waits: moved?.waits.length,
    "only-waits": moved && !hasMoved(moved) && moved.waits.length > 0, "only-more": isOnlyMore, unchanged: came?.unchanged,
    "inspected-otherwise": isInspected && moved && hasMoved(moved), "inspected-more": isInspected && isOnlyMore,
  };
};
