import type { ReactNode } from 'react';
import type { Caution, Plan, Tool } from '../../plan/index.ts';
import type { Words } from '../words/index.ts';
import { cautionPages } from './caution-list.tsx';
import { GlyphMark } from './glyph-mark.tsx';
import { Spoken } from './spoken.tsx';
import { Said, saidHeight, type Say } from './tongues.tsx';
import type { BookletInput } from './types.ts';

/** Always shown, whatever the plan's steps say. */
const always: readonly Caution[] = ['manual', 'children'];

const cautionOrder: readonly Caution[] = ['manual', 'sharp', 'dust', 'eyes', 'gloves', 'crush', 'children', 'climbing', 'tipping'];

const toolOrder: readonly Tool[] = ['hands', 'tape', 'pencil', 'straight-edge', 'saw', 'knife', 'punch', 'creaser', 'mallet', 'drill'];

/** People, time, tools and safety signs. */
export function before(input: BookletInput): readonly ReactNode[] {
  return cautionPages(input, {
    name: 'before',
    className: 'before',
    over: [
      { height: crewHeight(input), node: <PeopleAndTime key="crew" input={input} /> },
      { height: toolsHeight(input), node: <Tools key="tools" input={input} /> },
    ],
    cautions: workCautions(input.plan),
    sentences: input.report.advice.fixToWall ? {} : { tipping: 'hold' },
  });
}

/** Height of the pictograms of people and time with the white under them, and the room of the words beside them, mm. */
const crewGlyph = 20;
export const crewWhite = 6;
const crewWords = 55;

const crew: Say = ({ words, plan }) => words.t('booklet.people', { count: peopleAtMost(plan) });
const time: Say = ({ words, plan }) => words.t('booklet.time', { time: workTime(words, plan) });
const crewSize = 12;

function peopleAtMost({ steps }: Plan): number {
  return Math.max(...steps.map((step) => step.people));
}

function workTime(words: Words, plan: Plan): string {
  return words.duration(Math.ceil(totalMinutes(plan) / 10) * 10);
}

function crewHeight(input: BookletInput): number {
  if (input.edition === 'pictures') return crewGlyph + crewWhite;
  return Math.max(crewGlyph, ...[crew, time].map((say) => saidHeight(input, say, crewWords, { size: crewSize, bold: true }))) + crewWhite;
}

/** Tools side by side, each with its name under it: how many in a row, its width, white round the rows, mm; the names' size, pt, and lines, mm. */
const toolsInRow = 5;
export const toolWidth = 30.6;
export const toolGap = { rows: 5, columns: 3, over: 6, name: 1.5 } as const;
export const toolSize = 11;
export const toolLine = 5;
const toolGlyph = 20;
const bareToolGlyph = 25;

function toolsHeight(input: BookletInput): number {
  const tools = toolsOf(input.plan);
  const rows = Array.from({ length: Math.ceil(tools.length / toolsInRow) }, (_, index) => tools.slice(toolsInRow * index, toolsInRow * (index + 1)));
  const heights = rows.map((row) => (input.edition === 'pictures' ? bareToolGlyph : toolGlyph + toolGap.name + Math.max(...row.map((tool) =>
    saidHeight(input, ({ words }) => words.t(`booklet.tools.${tool}`), toolWidth, { size: toolSize, leading: toolLine })))));
  return 2 * toolGap.over + heights.reduce((sum, height) => sum + height, 0) + toolGap.rows * (rows.length - 1);
}

function toolsOf({ steps }: Plan): readonly Tool[] {
  const used = new Set(steps.flatMap((step) => step.tools));
  return toolOrder.filter((tool) => used.has(tool));
}

/** Cautions of all steps, each once, with those that always hold. */
export function workCautions({ steps }: Plan): readonly Caution[] {
  const used = new Set([...always, ...steps.flatMap((step) => step.cautions)]);
  return cautionOrder.filter((caution) => used.has(caution));
}

/** Minutes of all steps; a step's minutes already hold its repetitions. */
export function totalMinutes({ steps }: Plan): number {
  return steps.reduce((sum, step) => sum + step.minutes, 0);
}

function PeopleAndTime({ input }: { readonly input: BookletInput }): ReactNode {
  const { words, plan, glyphs, edition } = input;
  return (
    <div className="crew">
      <div>
        <GlyphMark glyph={glyphs.plain(peopleAtMost(plan) === 2 ? 'two-people' : 'one-person')} label={crew(input)} height={crewGlyph} />
        {edition === 'words' && <p><Said input={input} say={crew} /></p>}
      </div>
      <div className="time">
        <GlyphMark glyph={glyphs.plain('time')} label={words.t('booklet.alt.time')} height={crewGlyph} />
        <p>{edition === 'words' ? <Said input={input} say={time} /> : <Spoken text={workTime(words, plan)} />}</p>
      </div>
    </div>
  );
}

function Tools({ input }: { readonly input: BookletInput }): ReactNode {
  const { words, plan, glyphs, edition } = input;
  return (
    <ul className="tools">
      {toolsOf(plan).map((tool) => (
        <li key={tool}>
          <GlyphMark glyph={glyphs.tool(tool)} label={words.t(`booklet.tools.${tool}`)} height={edition === 'words' ? toolGlyph : bareToolGlyph} />
          {edition === 'words' && <span><Said input={input} say={(each) => each.words.t(`booklet.tools.${tool}`)} /></span>}
        </li>
      ))}
    </ul>
  );
}
