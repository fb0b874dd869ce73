import type { ReactNode } from 'react';
import type { Plan, WorkerCheck } from '../../plan/index.ts';
import { pageRoom } from './foot.tsx';
import { ChapterHeading, headingHeight } from './chapter.tsx';
import { CheckPictures } from './check-pictures.tsx';
import { packPages } from './pack.ts';
import { sheets, textSize } from './sheet.ts';
import { Said, inSeveral, saidHeight, type Say } from './tongues.tsx';
import type { BookletInput } from './types.ts';

/** Least height of a check with its words, height of its pictures, white between pictures and words and under both, mm. */
const checkHeight = 29.5;
const pictureHeight = 16;
export const checkGap = 1;
const checkWhite = 2.5;
/** Words' lines and white between checks side by side; the room of the pictures where the words stand beside them, mm. */
export const checkLine = 5;
export const checkColumnGap = 6;
export const checkPictures = 72;

/** Every check of the steps once more, to be gone through at the finished item. */
export function lastChecks(input: BookletInput): readonly ReactNode[] {
  const room = pageRoom(input);
  const rows = inRows(checksOf(input.plan), wordsBeside(input) ? 1 : 2).map((checks) => ({ checks, height: rowHeight(input, checks) }));
  return packPages(rows, room, room - headingHeight(input, 'checks')).map((page, index) => (
    <div className={wordsBeside(input) ? 'last-checks beside main' : 'last-checks main'} key={index}>
      {index === 0 && <ChapterHeading input={input} name="checks" />}
      {page.map((row, place) => (
        <ul key={place} style={{ height: `${row.height}mm` }}>
          {row.checks.map((check) => <CheckEntry key={check.name} input={input} check={check} />)}
        </ul>
      ))}
    </div>
  ));
}

/** Each check once, in the order of its first step. A measure that is asked for with two values stands twice. */
export function checksOf({ steps }: Plan): readonly WorkerCheck[] {
  const found = new Map<string, WorkerCheck>();
  for (const { check } of steps) {
    if (check) found.set(check.kind === 'measure' ? `${check.name} ${check.value}` : check.name, check);
  }
  return [...found.values()];
}

function inRows<Entry>(entries: readonly Entry[], wide: number): readonly (readonly Entry[])[] {
  return Array.from({ length: Math.ceil(entries.length / wide) }, (_, index) => entries.slice(wide * index, wide * (index + 1)));
}

const checkName = ({ name }: WorkerCheck): Say => ({ words }) => words.t(`checks.${name}`);

/** Whether each check has a row of its own, its words beside its pictures: with several languages, or on a narrow page. */
function wordsBeside(input: BookletInput): boolean {
  return sheets[input.paper].narrow || inSeveral(input);
}

/** Two checks side by side, their words under the pictures; or one, its words beside them. */
function rowHeight(input: BookletInput, checks: readonly WorkerCheck[]): number {
  if (input.edition === 'pictures') return wordsBeside(input) ? pictureHeight + checkWhite : checkHeight;
  const { main } = sheets[input.paper];
  const beside = wordsBeside(input);
  const width = beside ? main - checkPictures : (main - checkColumnGap) / 2;
  const words = Math.max(...checks.map((check) => saidHeight(input, checkName(check), width, { size: textSize, leading: checkLine, how: 'beside' })));
  return beside ? Math.max(pictureHeight, words) + checkWhite : Math.max(checkHeight, pictureHeight + checkGap + words + checkWhite);
}

function CheckEntry({ input, check }: { readonly input: BookletInput; readonly check: WorkerCheck }): ReactNode {
  const { edition } = input;
  return (
    <li>
      <div className="pair"><CheckPictures input={input} check={check} height={pictureHeight} /></div>
      {edition === 'words' && <p><Said input={input} say={checkName(check)} how="beside" /></p>}
    </li>
  );
}
