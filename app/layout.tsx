import "@fontsource-variable/literata/wght.css";
import "@fontsource-variable/literata/wght-italic.css";
import "@fontsource/atkinson-hyperlegible-next/400.css";
import "@fontsource/atkinson-hyperlegible-next/600.css";
import "./globals.css";
import type { Metadata, Viewport } from "next";
import type { ReactNode } from "react";

export const metadata: Metadata = { title: { default: "Can my rug be saved?", template: "%s" }, robots: { index: false } };
export const viewport: Viewport = { width: "device-width", initialScale: 1 };

/** Scripts run by a nonce that is new with every request (proxy.ts), and pages read the workshop's settings: none is made ahead. */
export const dynamic = "force-dynamic";

export default function Layout({ children }: { children: ReactNode }) {
  return (
    <html lang="en">
      <body>{children}</body>
    </html>
  );
}
