import type { ReactNode } from 'react';
import { isolate } from '../words/index.ts';
import { Spoken } from './spoken.tsx';
import type { BookletInput } from './types.ts';

interface ScaleBarProps {
  readonly input: BookletInput;
  /** mm of paper for one mm of part. */
  readonly scale: number;
}

/** Longest bar, mm of paper. */
const longest = 60;
const roundLengths = [1000, 500, 200, 100, 50, 20, 10] as const;

/** A bar as long as a round length at a scale, with the scale in figures. */
export function ScaleBar({ input: { words }, scale }: ScaleBarProps): ReactNode {
  const length = roundLengths.find((each) => each * scale <= longest) ?? 10;
  const width = length * scale;
  const ratio = [Math.max(1, scale), Math.max(1, 1 / scale)].map((side) => words.number(side, 1)).join('\u202f:\u202f');
  return (
    <p className="scale-bar">
      <svg role="img" aria-label={words.t('booklet.alt.scale', { length: words.measure(length, 'mm') })} direction="ltr" width={`${width + 1}mm`} height="4mm" viewBox={`-0.5 0 ${width + 1} 4`}>
        <path d={`M0 0.5V3.5M${width} 0.5V3.5M0 2H${width}`} fill="none" stroke="#000" strokeWidth={0.5} />
        <rect x={0} y={1.5} width={width / 2} height={1} />
      </svg>
      <Spoken text={words.measure(length, 'mm')} />
      <b><Spoken text={isolate(ratio)} /></b>
    </p>
  );
}
