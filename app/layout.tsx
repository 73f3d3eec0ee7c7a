import "@fontsource-variable/literata/wght.css";
import "@fontsource-variable/literata/wght-italic.css";
import "@fontsource/atkinson-hyperlegible-next/400.css";
import "@fontsource/atkinson-hyperlegible-next/600.css";
import "./globals.css";
import type { Metadata, Viewport } from "next";
import type { ReactNode } from "react";
import { BrowserWords } from "@/lib/ui/browser-words";
import { browserMessages, browserRemarks } from "@/lib/words/browser-messages";
import { clientWords } from "./_server/client-words";

export async function generateMetadata(): Promise<Metadata> {
  return { title: { default: (await clientWords()).say("front.title"), template: "%s" }, robots: { index: false } };
}
export const viewport: Viewport = { width: "device-width", initialScale: 1 };

/** Scripts run by a nonce that is new with every request (proxy.ts), and pages read the workshop's settings: none is made ahead. */
export const dynamic = "force-dynamic";

export default async function Layout({ children }: { children: ReactNode }) {
  const words = await clientWords();
  return (
    <html lang={words.locale}>
      <body><BrowserWords messages={browserMessages(words)} remarks={browserRemarks(words)}>{children}</BrowserWords></body>
    </html>
  );
}
