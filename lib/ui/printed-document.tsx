import type { Block, PrintedDocument } from "../reply/documents/blocks";
import { MarkedPhoto } from "./marked-photo";
import { PieceSizes, planBox, PlanSides } from "./plan-sides";
import css from "./printed-document.module.css";

/** A printed document as a page: the same blocks, in the same order, as its file is drawn from. */
export function PrintedSheet({ document: { title, head, blocks, language, reference } }: { document: PrintedDocument }) {
  return (
    <article className={css.sheet} lang={language} aria-label={title}>
      {head && <p className={css.head}>{[head.name, ...head.lines, ...(reference ? [reference] : [])].join(" · ")}</p>}
      {!blocks.some((b) => b.kind === "title") && <h2 className={css.title}>{title}</h2>}
      {runsOf(blocks).map((run, i) => (Array.isArray(run) ? <Photos key={i} photos={run} /> : <Part key={i} block={run} />))}
    </article>
  );
}

type Photo = Extract<Block, { kind: "photo" }>;

/** The blocks in their order, photos that stand one after the other together. */
function runsOf(blocks: readonly Block[]): (Photo[] | Exclude<Block, Photo>)[] {
  const runs: (Photo[] | Exclude<Block, Photo>)[] = [];
  for (const block of blocks) {
    const last = runs.at(-1);
    if (block.kind !== "photo") runs.push(block);
    else if (Array.isArray(last)) last.push(block);
    else runs.push([block]);
  }
  return runs;
}

/** Photos with their captions, two beside each other where there is room, as in the file. */
function Photos({ photos }: { photos: readonly Photo[] }) {
  return (
    <div className={css.photos}>
      {photos.map((p, i) => <figure key={i}>{p.shape ? <MarkedPhoto photo={p} shape={p.shape} /> : <img src={`/photos/${p.photoId}/1600`} alt={p.alternative} loading="lazy" />}<figcaption>{p.caption}</figcaption></figure>)}
    </div>
  );
}

function Part({ block: b }: { block: Exclude<Block, Photo> }) {
  switch (b.kind) {
    case "heading": return b.level === 2 ? <h3 className={css.heading}>{b.text}</h3> : <h4 className={css.sub}>{b.text}</h4>;
    case "title": return <h2 className={css.title}>{b.text}</h2>;
    case "part": return <h3 className={css.part}>{b.text}</h3>;
    case "paragraph": return <p dir="auto">{b.text}</p>;
    case "small": return <p className={css.small}>{b.text}</p>;
    case "list": return <ul>{b.items.map((item, i) => <li key={i} dir="auto">{item}</li>)}</ul>;
    case "table": return <Table table={b} />;
    case "plan": return <Plan plan={b} />;
    case "signature": return <p className={css.signature}>{b.lines.map((line, i) => (line === "" ? <span key={i} className={css.room} /> : <span key={i} dir="auto">{line}</span>))}</p>;
  }
}

function Table({ table: { caption, head, rows } }: { table: Extract<Block, { kind: "table" }> }) {
  return (
    <div className={css.scroll} tabIndex={0} role="region" aria-label={caption}>
      <table>
        <caption>{caption}</caption>
        <thead><tr>{head.map((h) => <th key={h} scope="col">{h}</th>)}</tr></thead>
        <tbody>{rows.map((cells, r) => <tr key={r}>{cells.map((cell, c) => (c === 0 ? <th key={c} scope="row">{cell}</th> : <td key={c}>{cell}</td>))}</tr>)}</tbody>
      </table>
    </div>
  );
}

/** Height of the letters of a plan, as a share of the rug's longer side. By eye. */
const LETTERS = 0.05;

/** The rug from above, as in the file: what remains is outlined and measured, the damage is filled, its sides stand beside it. */
function Plan({ plan: { widthCm, lengthCm, keep, damaged, sizes, photoTop, alternative } }: { plan: Extract<Block, { kind: "plan" }> }) {
  const sheet = { widthCm, lengthCm, text: Math.max(widthCm, lengthCm) * LETTERS };
  return (
    <figure>
      <svg className={css.plan} viewBox={sizes ? planBox(sheet, photoTop?.edge ?? null) : `-1 -1 ${widthCm + 2} ${lengthCm + 2}`} style={{ fontSize: sheet.text }} role="img" aria-label={alternative}>
        <rect className={css.whole} width={widthCm} height={lengthCm} />
        {damaged.map((outline, i) => <polygon key={i} className={css.lost} points={outline.map((p) => `${p.x},${p.y}`).join(" ")} />)}
        {keep.map((r, i) => <rect key={i} className={css.kept} x={r.left} y={r.top} width={r.right - r.left} height={r.bottom - r.top} />)}
        {sizes && <><PieceSizes pieces={keep} sizes={sizes.kept} text={sheet.text} /><PlanSides sheet={sheet} across={sizes.across} along={sizes.along} photoTop={photoTop ?? null} /></>}
      </svg>
      <figcaption>{alternative}</figcaption>
    </figure>
  );
}
