import type { ReactNode } from 'react';
import { Foot, footOver } from './foot.tsx';
import { sheets } from './sheet.ts';
import type { BookletInput } from './types.ts';

interface PageProps {
  readonly input: BookletInput;
  /** From 1. */
  readonly number: number;
  readonly total: number;
  readonly children: ReactNode;
}

/** A sheet of exact size: what the chapter puts on it, and its foot. */
export function Page({ input, number, total, children }: PageProps): ReactNode {
  const { width, height, top, bottom, outer, inner } = sheets[input.paper];
  return (
    <section className="page" style={{ width: `${width}mm`, height: `${height}mm`, padding: `${top}mm 0 ${bottom + footOver(input)}mm`, paddingInlineStart: `${outer}mm`, paddingInlineEnd: `${inner}mm` }}>
      <div className="sheet" data-page={number}>{children}</div>
      {(number > 1 || input.despiteFindings) && <Foot input={input} number={number} total={total} />}
    </section>
  );
}
