import { Fragment, type ReactNode } from 'react';
import type { Plan, WorkerCheck } from '../../plan/index.ts';
import { isolate } from '../words/index.ts';
import { pageRoom } from './foot.tsx';
import { ChapterHeading, headingHeight } from './chapter.tsx';
import type { Block } from './caution-list.tsx';
import { CheckPictures } from './check-pictures.tsx';
import { packPages } from './pack.ts';
import { sheets, textSize } from './sheet.ts';
import { Spoken } from './spoken.tsx';
import { rowText, stepRows } from './step-rows.ts';
import { Said, inSeveral, saidHeight, type Say } from './in-languages.tsx';
import type { BookletInput } from './types.ts';

/** Height of a check's pictures, of the numbers of its steps, white between pictures and words and under both, mm. */
const pictureHeight = 16;
const stepsHeight = 7;
/** Width of a letter of these numbers, of the widest figures of our languages, mm. */
const stepLetter = 3.1;
export const checkGap = 1;
const checkWhite = 2.5;
/** Words' lines and white between checks side by side; the room of the pictures where the words stand beside them, mm. */
export const checkLine = 5;
export const checkColumnGap = 6;
export const checkPictures = 72;

/** Every check of the steps once more with the numbers of its steps, to be gone through at the finished item. Each page with how much of it is taken. */
export function lastChecks(input: BookletInput): readonly Block[] {
  const room = pageRoom(input);
  const rows = inRows(checkedSteps(input.plan), wordsBeside(input) ? 1 : 2).map((checks) => ({ checks, height: rowHeight(input, checks) }));
  return packPages(rows, room, room - headingHeight(input, 'checks')).map((page, index) => ({
    height: (index === 0 ? headingHeight(input, 'checks') : 0) + page.reduce((sum, { height }) => sum + height, 0),
    node: (
      <div className={wordsBeside(input) ? 'last-checks beside main' : 'last-checks main'} key={index}>
        {index === 0 && <ChapterHeading input={input} name="checks" />}
        {page.map((row, place) => (
          <ul key={place} style={{ height: `${row.height}mm` }}>
            {row.checks.map((checked) => <CheckEntry key={checked.check.name} input={input} checked={checked} />)}
          </ul>
        ))}
      </div>
    ),
  }));
}

/** A check and the numbers of the steps that ask for it. */
interface Checked {
  readonly check: WorkerCheck;
  readonly steps: readonly number[];
}

/** Each check once, in the order of its first step. */
export const checksOf = (plan: Plan): readonly WorkerCheck[] => checkedSteps(plan).map(({ check }) => check);

/** The same with the steps of each. A measure that is asked for with two values stands twice. */
function checkedSteps({ steps }: Plan): readonly Checked[] {
  const found = new Map<string, Checked>();
  for (const { check, number } of steps) {
    if (check === null) continue;
    const key = check.kind === 'measure' ? `${check.name} ${check.value}` : check.name;
    found.set(key, { check, steps: [...found.get(key)?.steps ?? [], number] });
  }
  return [...found.values()];
}

const between = ' · ';

/** Lines of numbers of steps, an unbroken row as its first and last: `3–5 · 9`. */
function stepLines(input: BookletInput, numbers: readonly number[]): readonly string[] {
  const width = checkWidth(input);
  return stepRows(numbers).map((row) => rowText(input.words, row)).reduce<readonly string[]>((lines, row) => {
    const last = lines.at(-1);
    if (last === undefined) return [row];
    const longer = `${last}${between}${row}`;
    return longer.length * stepLetter <= width ? [...lines.slice(0, -1), longer] : [...lines, row];
  }, []);
}

/** Room of one check's pictures and numbers, mm. */
function checkWidth(input: BookletInput): number {
  const { main } = sheets[input.paper];
  return wordsBeside(input) ? checkPictures : (main - checkColumnGap) / 2;
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
function rowHeight(input: BookletInput, checks: readonly Checked[]): number {
  const pictures = pictureHeight + stepsHeight * Math.max(...checks.map(({ steps }) => stepLines(input, steps).length));
  if (input.edition === 'pictures') return pictures + checkWhite;
  const beside = wordsBeside(input);
  const width = beside ? sheets[input.paper].main - checkPictures : checkWidth(input);
  const words = Math.max(...checks.map(({ check }) => saidHeight(input, checkName(check), width, { size: textSize, leading: checkLine, how: 'beside' })));
  return beside ? Math.max(pictures, words) + checkWhite : pictures + checkGap + words + checkWhite;
}

function CheckEntry({ input, checked: { check, steps } }: { readonly input: BookletInput; readonly checked: Checked }): ReactNode {
  const { edition } = input;
  const lines = stepLines(input, steps);
  return (
    <li>
      <div>
        <div className="pair"><CheckPictures input={input} check={check} height={pictureHeight} /></div>
        <b className="asked-at" style={{ height: `${stepsHeight * lines.length}mm` }}>
          {lines.map((line) => <Fragment key={line}><Spoken text={isolate(line)} /><br /></Fragment>)}
        </b>
      </div>
      {edition === 'words' && <p><Said input={input} say={checkName(check)} how="beside" /></p>}
    </li>
  );
}
