"use client";
import { createContext, useContext, type ReactNode } from "react";
import type { ArgumentsOf } from "../words/arguments";
import type { BROWSER } from "../words/en/browser";
import { fill, type Fillings } from "../words/fill";

type Messages = typeof BROWSER;
export type BrowserKey = keyof Messages;
export type OpenMessages = Readonly<Record<BrowserKey, string>>;
type Given<K extends BrowserKey> = keyof ArgumentsOf<Messages[K]> extends never ? [] : [values: ArgumentsOf<Messages[K]>];
export type SayInBrowser = <K extends BrowserKey>(key: K, ...given: Given<K>) => string;

const Open = createContext<OpenMessages | null>(null);
const Retold = createContext<Readonly<Record<string, string>>>({});

/** Gives the parts of a page that run in the browser their words; the server has chosen the language. */
export function BrowserWords({ messages, remarks, children }: { messages: OpenMessages; remarks: Readonly<Record<string, string>>; children: ReactNode }) {
  return <Open value={messages}><Retold value={remarks}>{children}</Retold></Open>;
}

/** What a part of a page says in the browser. */
export function useSay(): SayInBrowser {
  const messages = useContext(Open);
  if (!messages) throw new Error("Expected a page to stand inside BrowserWords");
  return (key, ...[values]) => fill(messages[key], (values ?? {}) as Fillings);
}

/** A remark on a photo, which the device makes in English, in the words of the page. */
export function useRetell(): (sentence: string) => string {
  const remarks = useContext(Retold);
  return (sentence) => remarks[sentence] ?? sentence;
}
