import type { ReactNode } from 'react';
import type { Plan, WorkerCheck } from '../../plan/index.ts';
import { ChapterHeading } from './chapter.tsx';
import { CheckPictures, checkWidth } from './check-pictures.tsx';
import { besideHeight } from './narrow-head.ts';
import { packPages } from './pack.ts';
import { bandRoom, headingHeight, sheets } from './sheet.ts';
import type { BookletInput } from './types.ts';

/** Height of a check with its words, mm; two stand side by side. */
const checkHeight = 29.5;
const pictureHeight = 16;
/** On a narrow page, between a check's pictures and its words, and under it, mm. */
export const besideGap = 5;
const underCheck = 4;

/** Every check of the steps once more, to be gone through at the finished item. */
export function lastChecks(input: BookletInput): readonly ReactNode[] {
  const { narrow } = sheets[input.paper];
  const room = bandRoom(sheets[input.paper]);
  const rows = narrow
    ? checksOf(input.plan).map((check) => ({ checks: [check], height: besideCheck(input, check) }))
    : pairsOfTwo(checksOf(input.plan)).map((checks) => ({ checks, height: checkHeight }));
  return packPages(rows, room, room - headingHeight).map((page, index) => (
    <div className="last-checks main" key={index}>
      {index === 0 && <ChapterHeading input={input} name="checks" />}
      {page.map((row, place) => (
        <ul key={place} style={{ height: `${row.height}mm` }}>
          {row.checks.map((check) => <CheckEntry key={check.name} input={input} check={check} />)}
        </ul>
      ))}
    </div>
  ));
}

/** On a narrow page a check's words stand beside its pictures. */
function besideCheck(input: BookletInput, check: WorkerCheck): number {
  const words = input.edition === 'words' ? besideHeight(input, input.words.t(`checks.${check.name}`), checkWidth('pair', pictureHeight) + besideGap) : 0;
  return Math.max(pictureHeight, words) + underCheck;
}

/** Each check once, in the order of its first step. A measure that is asked for with two values stands twice. */
function checksOf({ steps }: Plan): readonly WorkerCheck[] {
  const found = new Map<string, WorkerCheck>();
  for (const { check } of steps) {
    if (check) found.set(check.kind === 'measure' ? `${check.name} ${check.value}` : check.name, check);
  }
  return [...found.values()];
}

function pairsOfTwo<Entry>(entries: readonly Entry[]): readonly (readonly Entry[])[] {
  return Array.from({ length: Math.ceil(entries.length / 2) }, (_, index) => entries.slice(2 * index, 2 * index + 2));
}

function CheckEntry({ input, check }: { readonly input: BookletInput; readonly check: WorkerCheck }): ReactNode {
  const { words, edition } = input;
  return (
    <li>
      <div className="pair" style={sheets[input.paper].narrow ? { width: `${checkWidth('pair', pictureHeight)}mm` } : {}}><CheckPictures input={input} check={check} height={pictureHeight} /></div>
      {edition === 'words' && <p>{words.t(`checks.${check.name}`)}</p>}
    </li>
  );
}
