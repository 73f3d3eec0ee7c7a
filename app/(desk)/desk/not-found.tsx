import { Link } from "@/lib/ui/link";
import styles from "@/app/error.module.css";

export default function NotFound() {
  return (
    <>
      <h1>There is nothing here</h1>
      <p className={styles.said}>Perhaps it was erased, or the address is not quite right.</p>
      <p><Link href="/desk">This morning</Link> or <Link href="/desk/everything">everything</Link></p>
    </>
  );
}
