import Link from "next/link";

export default function NotFound() {
  return (
    <>
      <h1>There is nothing here</h1>
      <p>Perhaps it was erased, or the address is not quite right.</p>
      <p><Link href="/desk">This morning</Link> or <Link href="/desk/everything">everything</Link></p>
    </>
  );
}
