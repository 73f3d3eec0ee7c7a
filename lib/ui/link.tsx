import NextLink from "next/link";
import type { ComponentProps } from "react";

/** A link to a page of ours. Nothing is fetched before it is pressed: each page is drawn anew for whoever asks, so that what was fetched ahead would be thrown away. */
export const Link = (props: Omit<ComponentProps<typeof NextLink>, "prefetch">) => <NextLink {...props} prefetch={false} />;
