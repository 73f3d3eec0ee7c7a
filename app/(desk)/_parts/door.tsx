import type { ReactNode } from "react";
import css from "./door.module.css";

/** The pages one sees before one is in: one column, the workshop's name above. */
export function Door({ workshop, title, children }: { workshop: string; title: string; children: ReactNode }) {
  return (
    <div className={css.door}>
      <p className={css.name}><bdi>{workshop}</bdi></p>
      <main>
        <h1>{title}</h1>
        {children}
      </main>
    </div>
  );
}
