import type { ReactNode } from "react";
import { BrowserWords } from "@/lib/ui/browser-words";
import { browserMessages, browserRemarks } from "@/lib/words/browser-messages";
import { deskWords } from "@/lib/words/words";
import { clientWords } from "../_server/client-words";

/** The desk is read in English, whatever language clients are written to in. */
export default async function Layout({ children }: { children: ReactNode }) {
  const words = deskWords((await clientWords()).locale);
  return <BrowserWords messages={browserMessages(words)} remarks={browserRemarks(words)}><div lang={words.locale} style={{ display: "contents" }}>{children}</div></BrowserWords>;
}
