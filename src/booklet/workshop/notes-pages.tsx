import type { ReactNode } from 'react';
import type { Action, Step } from '../../plan/index.ts';
import { GlyphMark } from '../pages/glyph-mark.tsx';
import { lineHeight, sheets, textSize } from '../pages/sheet.ts';
import { Spoken } from '../pages/spoken.tsx';
import { pieceName, ranges } from './names.ts';
import type { NoteBlock, Notes } from './notes.ts';
import { chapterPages, subheading, textRow, type Row } from './row.tsx';
import { linesIn } from './text-height.ts';
import type { PackInput, PackItem } from './types.ts';

const headHeight = 14.5;
const glyphHeight = 11;
const blockGap = 2;
/** Width that a list's sign takes, mm. */
const signWidth = 7;
/** White before the next work, mm. */
const after = 3;

/** The trainer's notes of each item: first the general ones, then each work with its steps, people, tools, time and notes. */
export function notesPages(input: PackInput): readonly ReactNode[] {
  return chapterPages(input, 'notes', input.items.flatMap((item) => [
    subheading(pieceName(input.words, item)),
    ...generalRows(input, item),
    ...actionsOf(item).flatMap((action) => actionRows(input, item, action)),
  ]));
}

const actionsOf = ({ plan }: PackItem): readonly Action[] => [...new Set(plan.steps.map(({ action }) => action))];

function generalRows(input: PackInput, { notes }: PackItem): readonly Row[] {
  const { words } = input;
  if (notes === null) return [textRow(input, words.t('pack.notes.none'))];
  const other = notes.lang === words.lang ? [] : [textRow(input, words.t('pack.notes.in-other-language'), <b>{words.t('pack.notes.in-other-language')}</b>)];
  return [...other, ...blockRows(input, notes.notes.general, notes.lang, after)];
}

/** One kind of work: a head with its step numbers in the margin, then what the notes say of it and of single steps. */
function actionRows(input: PackInput, { plan, notes }: PackItem, action: Action): readonly Row[] {
  const steps = plan.steps.filter((step) => step.action === action);
  const said = notes === null ? [] : [...noted(input, notes.notes, action, notes.lang), ...steps.flatMap((step) => notedStep(input, notes.notes, step, notes.lang))];
  const head: Row = { height: headHeight, leads: said.length > 0, node: <WorkHead input={input} steps={steps} action={action} /> };
  return [head, ...said];
}

const noted = (input: PackInput, notes: Notes, heading: string, lang: string): readonly Row[] =>
  blockRows(input, notes.bySteps.get(heading) ?? [], lang, after);

/** Notes on one step alone carry its number. */
function notedStep(input: PackInput, notes: Notes, step: Step, lang: string): readonly Row[] {
  const blocks = step.key === step.action ? [] : notes.bySteps.get(step.key) ?? [];
  if (blocks.length === 0) return [];
  const told = input.words.t('pack.notes.one-step', { step: step.number });
  return [{ height: lineHeight, leads: true, node: <p className="main"><b><Spoken text={told} /></b></p> }, ...blockRows(input, blocks, lang, after)];
}

function WorkHead({ input: { words, glyphs }, steps, action }: { readonly input: PackInput; readonly steps: readonly Step[]; readonly action: Action }): ReactNode {
  const [first] = steps;
  const name = words.t(`actions.names.${action}`);
  const people = Math.max(...steps.map((step) => step.people));
  const minutes = steps.reduce((sum, step) => sum + step.minutes, 0);
  return (
    <div className="work-head">
      <b className="numbers"><Spoken text={ranges(words, steps.map(({ number }) => number))} /></b>
      <div className="what">
        <GlyphMark glyph={glyphs.action(action)} label={name} height={glyphHeight} />
        <h3>{name}</h3>
        <span className="needs">
          {first?.tools.map((tool) => <GlyphMark key={tool} glyph={glyphs.tool(tool)} label={words.t(`booklet.tools.${tool}`)} height={8} />)}
          <GlyphMark glyph={glyphs.plain(people === 2 ? 'two-people' : 'one-person')} label={words.t('booklet.people', { count: people })} height={8} />
        </span>
        <b><Spoken text={words.duration(Math.round(minutes))} /></b>
      </div>
    </div>
  );
}

/** Blocks of notes in the language they are in, the last with white under it. */
function blockRows({ words }: PackInput, blocks: readonly NoteBlock[], lang: string, under: number): readonly Row[] {
  const foreign = lang !== words.lang;
  return blocks.map((block, index) => {
    const indent = block.kind === 'entry' ? signWidth : 0;
    const lines = linesIn(words, lang, block.text, sheets.a4.main - indent, textSize);
    return {
      height: lines * lineHeight + (index === blocks.length - 1 ? under : blockGap),
      node: (
        <div className="note main" {...(foreign ? { lang, dir: 'ltr', style: { fontSize: `${textSize}pt` } } : {})}>
          {block.kind === 'entry' && <span className="sign" style={{ width: `${signWidth}mm` }}>{block.sign}</span>}
          {/* Made by the Markdown reader, which writes all that is not its own as text. */}
          <p dangerouslySetInnerHTML={{ __html: block.html }} />
        </div>
      ),
    };
  });
}
