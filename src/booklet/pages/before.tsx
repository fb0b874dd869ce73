import type { ReactNode } from 'react';
import type { Caution, Plan, Tool } from '../../plan/index.ts';
import { CautionList } from './caution-list.tsx';
import { ChapterHeading } from './chapter.tsx';
import { GlyphMark } from './glyph-mark.tsx';
import { sheets } from './sheet.ts';
import { Spoken } from './spoken.tsx';
import type { BookletInput } from './types.ts';

/** Always shown, whatever the plan's steps say. */
const always: readonly Caution[] = ['manual', 'children'];

const cautionOrder: readonly Caution[] = ['manual', 'sharp', 'dust', 'eyes', 'gloves', 'crush', 'children', 'climbing', 'tipping'];

const toolOrder: readonly Tool[] = ['hands', 'tape', 'pencil', 'straight-edge', 'saw', 'knife', 'punch', 'creaser', 'mallet', 'drill'];

/** People, time, tools and safety signs. */
export function before(input: BookletInput): readonly ReactNode[] {
  const heading = <ChapterHeading input={input} name="before" />;
  const work = <><PeopleAndTime input={input} /><Tools input={input} /></>;
  const cautions = <CautionList input={input} cautions={workCautions(input.plan)} sentences={input.report.advice.fixToWall ? {} : { tipping: 'hold' }} />;
  return sheets[input.paper].narrow
    ? [<div className="before main" key="before">{heading}{work}</div>, <div className="before main" key="cautions">{cautions}</div>]
    : [<div className="before main" key="before">{heading}{work}{cautions}</div>];
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
  const people = Math.max(...plan.steps.map((step) => step.people));
  const crew = words.t('booklet.people', { count: people });
  const time = words.duration(Math.ceil(totalMinutes(plan) / 10) * 10);
  return (
    <div className="crew">
      <div>
        <GlyphMark glyph={glyphs.plain(people === 2 ? 'two-people' : 'one-person')} label={crew} height={20} />
        {edition === 'words' && <p>{crew}</p>}
      </div>
      <div className="time">
        <GlyphMark glyph={glyphs.plain('time')} label={words.t('booklet.alt.time')} height={20} />
        <p><Spoken text={edition === 'words' ? words.t('booklet.time', { time }) : time} /></p>
      </div>
    </div>
  );
}

function Tools({ input }: { readonly input: BookletInput }): ReactNode {
  const { words, plan, glyphs, edition } = input;
  const used = new Set(plan.steps.flatMap((step) => step.tools));
  return (
    <ul className="tools">
      {toolOrder.filter((tool) => used.has(tool)).map((tool) => {
        const name = words.t(`booklet.tools.${tool}`);
        return (
          <li key={tool}>
            <GlyphMark glyph={glyphs.tool(tool)} label={name} height={edition === 'words' ? 20 : 25} />
            {edition === 'words' && <span>{name}</span>}
          </li>
        );
      })}
    </ul>
  );
}
