import type { ReactNode } from 'react';
import type { Block } from './caution-list.tsx';
import { pageRoom } from './foot.tsx';
import { sheets } from './sheet.ts';
import { toldHeight } from './told.ts';
import { Said, type Say } from './in-languages.tsx';
import type { BookletInput } from './types.ts';

/** A picture with a sentence under it. */
export interface Told {
  readonly name: string;
  readonly say: Say;
  /** Height of the picture, mm. */
  readonly height: number;
  readonly picture: ReactNode;
  /** Width of its column beside another, mm. */
  readonly width: number;
}

/**
 * One or two things told side by side; one under the other where their sentences, side by side, are higher than a
 * page. `pad` is the white over and under them together, mm.
 */
export function toldBlocks(input: BookletInput, className: string, pad: number, told: readonly Told[]): readonly Block[] {
  const beside = pad + Math.max(...told.map(({ say, height, width }) => toldHeight(input, say, height, width)));
  const block = (height: number, some: readonly Told[], kind: string): Block => ({
    height,
    node: <div className={kind} key={some[0]?.name}>{some.map((each) => <OneTold key={each.name} input={input} told={each} />)}</div>,
  });
  if (beside <= pageRoom(input)) return [block(beside, told, className)];
  return told.map((each) => block(pad + toldHeight(input, each.say, each.height, sheets[input.paper].main), [each], `${className} alone`));
}

function OneTold({ input, told: { say, picture } }: { readonly input: BookletInput; readonly told: Told }): ReactNode {
  return (
    <div className="told">
      {picture}
      {input.edition === 'words' && <p><Said input={input} say={say} /></p>}
    </div>
  );
}
