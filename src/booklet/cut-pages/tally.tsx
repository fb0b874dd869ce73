import type { ReactNode } from 'react';

/** Boxes for a tick, in fives; more than this are not drawn. mm. */
const MOST = 100;
const box = 5.8;
const gap = 1.4;
const apart = 3.6;
const perRow = 20;

/** A box for every stock piece cut alike, to tick off. */
export function Tally({ count, label }: { readonly count: number; readonly label: string }): ReactNode {
  const drawn = Math.min(count, MOST);
  const rows = Math.ceil(drawn / perRow);
  const width = perRow * (box + gap) + (perRow / 5) * apart;
  const height = rows * (box + gap * 2);
  return (
    <svg className="tally" role="img" aria-label={label} width={`${width}mm`} height={`${height}mm`} viewBox={`0 0 ${width} ${height}`}>
      {Array.from({ length: drawn }, (_, index) => {
        const column = index % perRow;
        return <rect key={index} x={0.3 + column * (box + gap) + Math.floor(column / 5) * apart} y={0.3 + Math.floor(index / perRow) * (box + gap * 2)} width={box} height={box} fill="none" stroke="#000" strokeWidth={0.3} />;
      })}
    </svg>
  );
}
