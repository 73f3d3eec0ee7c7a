import { createElement, Fragment, type ReactNode } from "react";

/** The parts of a message in their order, to stand in a page. */
export const inPage = (parts: readonly ReactNode[]): ReactNode => createElement(Fragment, null, ...parts);
