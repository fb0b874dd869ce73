import type { ReactNode } from 'react';
import type { Task } from '../../plan/index.ts';
import { GlyphMark } from '../pages/glyph-mark.tsx';
import { lineHeight, sheets } from '../pages/sheet.ts';
import { Spoken } from '../pages/spoken.tsx';
import { isolate } from '../words/index.ts';
import { clock, pieceName, ranges } from './names.ts';
import { programsOf, stretchesOf, tasksByTeam, type Program, type Stretch } from './programs.ts';
import { chapterPages, subheading, textHeight, textRow, type Row } from './row.tsx';
import type { PackInput } from './types.ts';

/** Pictograms of a session's work: height, pitch, and how many stand in a line, mm. */
const glyph = 9;
const glyphPitch = 10.5;
const perLine = Math.floor(sheets.a4.main / glyphPitch);
const pad = 3;

type Block = PackInput['timetable']['days'][number]['blocks'][number];

/** Day by day, from the opening to the signing: when what is done, by which teams. */
export function timetable(input: PackInput): readonly ReactNode[] {
  const { words, timetable: { crew, days } } = input;
  const byTeam = tasksByTeam(input.timetable);
  return chapterPages(input, 'timetable', [
    textRow(input, words.t('pack.timetable.says')),
    ...(crew.trainerHelps ? [textRow(input, words.t('pack.timetable.trainer-helps'))] : []),
    ...days.flatMap(({ day, blocks }) => [
      subheading(words.t('pack.timetable.day', { day })),
      ...blocks.flatMap((block) => blockRows(input, day, block, byTeam)),
    ]),
  ]);
}

function blockRows(input: PackInput, day: number, block: Block, byTeam: readonly (readonly Task[])[]): readonly Row[] {
  if (block.kind !== 'work') {
    const says = input.words.t(`pack.timetable.${block.kind}`);
    return [timedRow(input, block, { height: Math.max(2 * lineHeight, textHeight(input, says, sheets.a4.main, 0)), node: <p>{says}</p> }, 'pause')];
  }
  const programs = programsOf(byTeam, day, block.start, block.end);
  const parts = programs.flatMap((program) => programParts(input, program, programs.length > 1));
  const [first, ...more] = parts;
  if (first === undefined) return [];
  return [timedRow(input, block, first, 'session'), ...more.map((part) => ({ height: part.height + pad, node: <div className="timed"><span />{part.node}</div> }))];
}

/** A row with its times in the margin. */
function timedRow({ words }: PackInput, { start, end }: Block, content: Row, kind: 'pause' | 'session'): Row {
  return {
    height: Math.max(content.height, 2 * lineHeight) + 2 * pad,
    node: <div className={`timed begins ${kind}`}><span className="times"><b><Spoken text={clock(words, start)} /></b><br /><Spoken text={clock(words, end)} /></span>{content.node}</div>,
  };
}

/** What the teams of a program do in a session: a part for each piece, with its steps and their pictograms. */
function programParts(input: PackInput, { teams, tasks }: Program, named: boolean): readonly Row[] {
  const { words } = input;
  const team = named ? teamsText(input, teams) : null;
  if (tasks.length === 0) {
    const says = words.t('pack.timetable.done');
    return team === null ? [] : [{ height: textHeight(input, `${team}: ${says}`, sheets.a4.main, 0), node: <p><b><Spoken text={team} /></b> {says}</p> }];
  }
  return stretchesOf(tasks).map((stretch) => stretchPart(input, stretch, team));
}

const teamsText = ({ words }: PackInput, teams: readonly number[]): string =>
  (teams.length === 1 ? words.t('pack.timetable.team', { team: teams[0] ?? 0 }) : words.t('pack.timetable.teams', { teams: ranges(words, teams) }));

function stretchPart(input: PackInput, { work, piece, tasks }: Stretch, team: string | null): Row {
  const { words, glyphs } = input;
  const item = input.items[work];
  if (item === undefined) throw new Error(`pack: no work ${work}`);
  const [first, last] = [tasks[0], tasks.at(-1)];
  const line = words.t('pack.timetable.line', { item: pieceName(words, item), piece, steps: stepsText(input, tasks) });
  const times = `${clock(words, first?.start ?? 0)}–${clock(words, last?.end ?? 0)}`;
  const actions = [...new Set(tasks.map(({ step }) => step.action))];
  const text = textHeight(input, `${team ?? ''} ${times} ${line}`, sheets.a4.main, 1.5);
  return {
    height: text + Math.ceil(actions.length / perLine) * glyphPitch,
    node: (
      <div>
        <p style={{ height: `${text}mm` }}>{team !== null && <><b><Spoken text={team} /></b> </>}<Spoken text={times} />{' '}<Spoken text={line} /></p>
        <div className="glyphs" style={{ gap: `${glyphPitch - glyph}mm` }}>
          {actions.map((action) => <GlyphMark key={action} glyph={glyphs.action(action)} label={words.t(`actions.names.${action}`)} height={glyph} />)}
        </div>
      </div>
    ),
  };
}

/** Whole steps as ranges; a step of which only some repetitions are done tells which: `5–7, 8 (1–2/4)`. */
function stepsText({ words }: PackInput, tasks: readonly Task[]): string {
  const bare = (text: string): string => text.slice(1, -1);
  const isWhole = ({ step, from, to }: Task): boolean => from === 1 && to === step.times;
  const whole = tasks.filter(isWhole).map(({ step }) => step.number);
  const parts = tasks.filter((task) => !isWhole(task)).map((task) => ({
    number: task.step.number,
    text: `${words.number(task.step.number)} (${words.number(task.from)}${task.to > task.from ? `–${words.number(task.to)}` : ''}/${words.number(task.step.times)})`,
  }));
  const before = parts.filter(({ number }) => number < (whole[0] ?? Infinity)).map(({ text }) => text);
  const after = parts.filter(({ number }) => number >= (whole[0] ?? Infinity)).map(({ text }) => text);
  return isolate([...before, ...(whole.length === 0 ? [] : [bare(ranges(words, whole))]), ...after].join(', '));
}
