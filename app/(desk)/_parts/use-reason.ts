import { useRouter } from "next/navigation";
import { useRef, useState, useTransition, type FormEvent } from "react";
import type { Result } from "@/lib/enquiry/caller";
import { reach } from "./reach";

/** A form of one reason: does what it is for, says what came of it where the focus goes, and fetches the page anew. */
export function useReason(deed: (reason: string) => Promise<Result<null>>, done: string) {
  const [said, setSaid] = useState("");
  const [isBusy, start] = useTransition();
  const status = useRef<HTMLParagraphElement>(null);
  const router = useRouter();
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const reason = String(new FormData(event.currentTarget).get("reason"));
    start(async () => {
      const result = await reach(() => deed(reason));
      setSaid(result.ok ? done : result.say);
      status.current?.focus();
      router.refresh();
    });
  };
  return { said, isBusy, status, submit };
}
