import type { ReactNode } from "react";
import { staffCallerOrRedirect } from "@/app/_server/caller";
import { Nav } from "@/lib/ui/nav";
import { readSettings } from "@/lib/workshop/settings";
import { leave } from "../sign-in/actions";
import css from "./desk.module.css";

/** The head of every staff page. It is no guard: each page and each operation asks for itself who is there. */
export default async function Layout({ children }: { children: ReactNode }) {
  const caller = await staffCallerOrRedirect();
  const { name } = await readSettings();
  return (
    <div className={css.desk}>
      <Nav workshop={name} person={caller.name} isOwner={caller.role === "owner"} signOut={leave} />
      <main id="main" tabIndex={-1} className={css.main}>{children}</main>
    </div>
  );
}
