import type { ReactNode } from 'react';
import { toolSizesOf, type Caution, type Plan, type Tool, type ToolSize } from '../../plan/index.ts';
import { isolate, type Words } from '../words/index.ts';
import { cautionPages, type Block } from './caution-list.tsx';
import { GlyphMark } from './glyph-mark.tsx';
import { sheets } from './sheet.ts';
import { Spoken } from './spoken.tsx';
import { Said, saidHeight, type Say } from './in-languages.tsx';
import type { BookletInput } from './types.ts';

/** Always shown, whatever the plan's steps say. */
const always: readonly Caution[] = ['manual', 'children'];

/** In the order in which pages tell them. */
export const cautionOrder: readonly Caution[] = ['manual', 'sharp', 'dust', 'eyes', 'gloves', 'crush', 'bit', 'lines', 'children', 'climbing', 'sitting', 'tipping'];

/** The order in which tools are shown. */
export const toolOrder: readonly Tool[] = ['hands', 'tape', 'pencil', 'square', 'straight-edge', 'clamp', 'saw', 'knife', 'punch', 'creaser', 'mallet', 'board', 'file', 'water', 'sticky-tape', 'finder', 'drill', 'screwdriver', 'scale', 'bottle', 'plumb-line', 'steps', 'block'];

/** People, time, tools and safety signs. */
export function before(input: BookletInput): readonly ReactNode[] {
  return cautionPages(input, {
    name: 'before',
    className: 'before',
    over: [
      { height: crewHeight(input), node: <PeopleAndTime key="crew" input={input} /> },
      ...toolRows(input),
    ],
    cautions: workCautions(input.plan),
    sentences: input.report.advice.wall === null ? { tipping: 'hold' } : {},
  }).map(({ node }) => node);
}

/** Height of the pictograms of people and time with the white under them, and the room of the words beside them, mm. */
const crewGlyph = 20;
export const crewWhite = 6;
const crewWords = { wide: 55, narrow: 33 } as const;
export const crewGap = { wide: 14, narrow: 8 } as const;

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
  const width = sheets[input.paper].narrow ? crewWords.narrow : crewWords.wide;
  return Math.max(crewGlyph, ...[crew, time].map((say) => saidHeight(input, say, width, { size: crewSize, bold: true }))) + crewWhite;
}

/** Tools side by side, each with its name under it: its width, white over and under a row, between names and pictures, mm; the names' size, pt, and lines, mm. */
export const toolWidth = 30.6;
export const toolGap = { rows: 5.5, columns: 3, name: 1.5 } as const;
export const toolSize = 11;
export const toolLine = 5;
const toolGlyph = 20;
/** The diameters of bits and punches, under the tool. */
const toolSizeLine = toolGap.name + toolLine;

/** Each row by itself: in several languages they may need more than a page. */
function toolRows(input: BookletInput): readonly Block[] {
  const tools = toolsOf(input.plan);
  const wide = Math.floor((sheets[input.paper].main + toolGap.columns) / (toolWidth + toolGap.columns));
  const rows = Array.from({ length: Math.ceil(tools.length / wide) }, (_, index) => tools.slice(wide * index, wide * (index + 1)));
  return rows.map((row, index) => ({
    height: toolGap.rows + toolsHeight(input, row) + (index === rows.length - 1 ? toolGap.rows : 0),
    node: <Tools key={row.join()} input={input} tools={row} isLast={index === rows.length - 1} />,
  }));
}

function toolsHeight(input: BookletInput, row: readonly Tool[]): number {
  const sizes = row.some((tool) => toolSizesOf(input.plan, tool).length > 0) ? toolSizeLine : 0;
  if (input.edition === 'pictures') return toolGlyph + sizes;
  return sizes + toolGlyph + toolGap.name + Math.max(...row.map((tool) => saidHeight(input, ({ words }) => words.t(`booklet.tools.${tool}`), toolWidth, { size: toolSize, leading: toolLine })));
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

function Tools({ input, tools, isLast }: { readonly input: BookletInput; readonly tools: readonly Tool[]; readonly isLast: boolean }): ReactNode {
  const { words, glyphs, edition } = input;
  return (
    <ul className={isLast ? 'tools last' : 'tools'}>
      {tools.map((tool) => (
        <li key={tool}>
          <GlyphMark glyph={glyphs.tool(tool)} label={words.t(`booklet.tools.${tool}`)} height={toolGlyph} />
          {edition === 'words' && <span><Said input={input} say={(each) => each.words.t(`booklet.tools.${tool}`)} /></span>}
          <ToolSizes words={words} sizes={toolSizesOf(input.plan, tool)} />
        </li>
      ))}
    </ul>
  );
}

/** `Ø6 Ø8 mm` in a line of its own; nothing for a tool of one size. */
function ToolSizes({ words, sizes }: { readonly words: Words; readonly sizes: readonly ToolSize[] }): ReactNode {
  const told = toolSizesText(words, sizes);
  return told === null ? null : <b style={{ display: 'block', lineHeight: `${toolLine}mm`, fontSize: `${toolSize}pt`, whiteSpace: 'nowrap' }}><Spoken text={told} /></b>;
}

/** The diameters of bits and punches and the radius of a wheel's rim, isolated; null where there are none to tell. */
export const toolSizesText = (words: Words, sizes: readonly ToolSize[]): string | null =>
  (sizes.length === 0 ? null : isolate(sizes.map(({ is, mm }) => `${is === 'radius' ? 'R' : 'Ø'}${words.number(mm, 1)}`).join(' ')));
