import styles from "./telephone.module.css";

/** A telephone number that can be rung from the page. */
export function Telephone({ number, className = styles.telephone }: { number: string; className?: string | undefined }) {
  return <a className={className} href={`tel:${number.replace(/[^\d+]/g, "")}`}>{number}</a>;
}
