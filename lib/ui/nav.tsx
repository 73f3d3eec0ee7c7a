"use client";
import { Link } from "./link";
import { usePathname } from "next/navigation";
import css from "./nav.module.css";

const PAGES = [
  { href: "/desk", name: "This morning" },
  { href: "/desk/everything", name: "Everything" },
  { href: "/desk/post", name: "Post" },
  { href: "/desk/letters", name: "Letters" },
] as const;
const OWNERS = [
  { href: "/desk/people", name: "People" },
  { href: "/desk/settings", name: "Settings" },
] as const;

/** The head of every staff page. An enquiry counts as part of "This morning". */
export function Nav({ workshop, person, isOwner, signOut }: { workshop: string; person: string; isOwner: boolean; signOut: () => Promise<void> }) {
  const path = usePathname();
  const pages = [...PAGES, ...(isOwner ? OWNERS : [])];
  const here = pages.filter((p) => path === p.href || path.startsWith(`${p.href}/`)).at(-1)?.href;
  return (
    <header className={`${css.head} no-print`}>
      <a className={css.skip} href="#main">Skip to the page</a>
      <Link href="/desk" className={css.name}><bdi>{workshop}</bdi></Link>
      <nav className={css.pages} aria-label="Desk">
        {pages.map(({ href, name }) => (
          <Link key={href} href={href} aria-current={href !== here || path === "/desk/telephone" ? undefined : path === href ? "page" : "true"}>{name}</Link>
        ))}
        <Link className={css.telephone} href="/desk/telephone" aria-current={path === "/desk/telephone" ? "page" : undefined}>By telephone</Link>
      </nav>
      <form className={css.leave} action={signOut}><button className={css.out}>Sign out <span className="unseen">{person}</span></button></form>
    </header>
  );
}
