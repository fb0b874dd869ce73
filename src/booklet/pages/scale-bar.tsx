import type { ReactNode } from 'react';
import { Spoken } from './spoken.tsx';
import type { BookletInput } from './types.ts';

/** Longest bar, mm of paper. */
const longest = 60;
const roundLengths = [1000, 500, 200, 100, 50, 20, 10] as const;

/** A bar as long as a round length at the scale of the parts' pictures; nothing where the scale is not told. */
export function ScaleBar({ input }: { readonly input: BookletInput }): ReactNode {
  const { partScale, words } = input;
  if (partScale === undefined) return null;
  const length = roundLengths.find((each) => each * partScale <= longest) ?? 10;
  const width = length * partScale;
  return (
    <p className="scale-bar">
      <svg role="img" aria-label={words.t('booklet.alt.scale', { length: words.measure(length, 'mm') })} direction="ltr" width={`${width + 1}mm`} height="4mm" viewBox={`-0.5 0 ${width + 1} 4`}>
        <path d={`M0 0.5V3.5M${width} 0.5V3.5M0 2H${width}`} fill="none" stroke="#000" strokeWidth={0.5} />
        <rect x={0} y={1.5} width={width / 2} height={1} />
      </svg>
      <Spoken text={words.measure(length, 'mm')} />
    </p>
  );
}
