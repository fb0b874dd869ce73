import type { ReactNode } from 'react';
import {
  chapterGlyph, checksOf, countKey, countsBySize, finishedAlt, itemName, overall, partName, partsCounted, sizeName, sizeText, suppliesSaid, toolSizesText, totalMinutes, toolOrder, workCautions,
  type ChapterName,
} from '../../booklet/index.ts';
import { findPicture } from '../../draw/index.ts';
import { PART_KINDS } from '../../parts/facts.ts';
import { varietiesOf } from '../../parts/varieties.ts';
import { suppliesOf, toolSizesOf } from '../../plan/index.ts';
import type { Telling } from '../types.ts';
import { ForWhom, Load } from './carries.tsx';
import { Check } from './checks.tsx';
import type { GuidePage, Maker } from './page.ts';
import { Drawing, Figure, Mark, Said, Small } from './said.tsx';
import { Signs } from './signs.tsx';
import { SizeMark } from './size-mark.tsx';

/** What the item is, how large, and of which make the guide is. */
export function startPage(maker: Maker, languages: readonly LanguageName[]): GuidePage {
  const { base, say } = maker;
  const name = say(itemName);
  return {
    id: 'start',
    group: 'before',
    label: name,
    sign: { glyph: chapterGlyph(base.glyphs, 'dimensions') },
    content: (
      <>
        <h1 className="name" data-say={name.number}>{name.text}</h1>
        <Drawing maker={maker} of={{ what: 'finished' }} label={say(finishedAlt)} />
        <div className="row facts">
          <SizeMark maker={maker} />
          <div>
            <Said className="size" phrase={say((telling) => sizeName(telling, telling.model))} />
            <p><Figure text={overall(base)} /></p>
          </div>
          <div className="carries"><Load maker={maker} /><ForWhom maker={maker} /></div>
          <ChooseLanguage maker={maker} languages={languages} />
          <p className="print"><bdi dir="ltr">{base.words.number(base.revision)} · {base.contentMark}</bdi></p>
        </div>
      </>
    ),
  };
}

export interface LanguageName {
  readonly tag: string;
  readonly name: string;
}

/** All languages by their own names: the way to the panel where one is picked, for those who do not find the button in the corner. */
function ChooseLanguage({ maker, languages }: { readonly maker: Maker; readonly languages: readonly LanguageName[] }): ReactNode {
  const label = maker.say(({ words }) => words.t('guide.words'));
  return (
    <button type="button" className="speaking scripted" data-opens="">
      <span className="heard" data-say={label.number}>{label.text}</span>
      {languages.map(({ tag, name }) => <bdi key={tag} lang={tag}>{name}</bdi>)}
    </button>
  );
}

/** A page with a chapter's pictogram, or with words its name, for a heading. */
export function chapter(maker: Maker, name: ChapterName, group: string, content: ReactNode): GuidePage {
  const label = maker.say(({ words }) => words.t(`booklet.chapters.${name}`));
  const glyph = chapterGlyph(maker.base.glyphs, name);
  return {
    id: name,
    group,
    label,
    sign: { glyph },
    content: (
      <>
        <h1><Mark maker={maker} glyph={glyph} label={label} className="title" /><Said as="span" phrase={label} /></h1>
        {content}
      </>
    ),
  };
}

/** Cautions, people, time and tools. */
export function beforePage(maker: Maker): GuidePage {
  const { base } = maker;
  return chapter(maker, 'before', 'before', (
    <>
      <Signs maker={maker} cautions={workCautions(base.plan)} sentences={base.report.advice.wall === null ? { tipping: 'hold' } : {}} />
      <Crew maker={maker} />
      <Tools maker={maker} />
    </>
  ));
}

function Crew({ maker }: { readonly maker: Maker }): ReactNode {
  const { base, say } = maker;
  const people = Math.max(...base.plan.steps.map((step) => step.people));
  const time = (telling: Telling): string => telling.words.duration(Math.ceil(totalMinutes(telling.plan) / 10) * 10);
  return (
    <div className="row crew">
      <Mark maker={maker} glyph={base.glyphs.plain(people === 2 ? 'two-people' : 'one-person')} label={say(({ words }) => words.t('booklet.people', { count: people }))} />
      <Mark maker={maker} glyph={base.glyphs.plain('time')} label={say(({ words }) => words.t('booklet.alt.time'))} />
      <b><Figure text={time(base)} /></b>
    </div>
  );
}

function Tools({ maker }: { readonly maker: Maker }): ReactNode {
  const { base: { plan, glyphs, words }, say } = maker;
  const used = new Set(plan.steps.flatMap((step) => step.tools));
  return (
    <ul className="tools">
      {toolOrder.filter((tool) => used.has(tool)).map((tool) => {
        const name = say(({ words }) => words.t(`booklet.tools.${tool}`));
        return <li key={tool}><Mark maker={maker} glyph={glyphs.tool(tool)} label={name} /><Said as="span" phrase={name} /> <b><Figure text={toolSizesText(words, toolSizesOf(plan, tool)) ?? ''} /></b></li>;
      })}
    </ul>
  );
}

/** Every kind of part with its counts, by size where it comes in several, and what is taken beside the parts. */
export function partsPage(maker: Maker): GuidePage {
  const { base: { model, plan, words }, say, pictures } = maker;
  const blocks = findPicture(pictures, { what: 'blocks' });
  const block = say((telling) => telling.words.t('booklet.tools.block'));
  return chapter(maker, 'parts', 'before', (
    <>
    <ul className="parts">
      {PART_KINDS.flatMap((kind) => varietiesOf(model, kind)).map(({ kind, variety, parts }) => (
        <li key={`${kind} ${variety}`}>
          <Small maker={maker} of={{ what: 'part', kind, variety }} label={say((telling) => partsCounted(telling.words, kind, parts))} />
          <div>
            <Said as="span" phrase={say((telling) => partName(telling.words, kind, parts))} />
            {countsBySize(model, parts.map(({ id }) => id)).map((counted) => (
              <p key={countKey(counted)}><b><Figure text={words.times(counted.count)} /></b> <Figure text={sizeText(words, counted) ?? ''} /></p>
            ))}
          </div>
        </li>
      ))}
      {suppliesOf(plan).map(({ name, count, size }) => (
        <li key={`${name} ${size.join()}`}>
          <Small maker={maker} of={{ what: 'supply', name }} label={say((telling) => suppliesSaid(telling.words, name, count))} />
          <div>
            <Said as="span" phrase={say((telling) => telling.words.t(`parts.${name}.name`))} />
            <p><b><Figure text={words.times(count)} /></b> <Figure text={sizeText(words, { size, isRound: true }) ?? ''} /></p>
          </div>
        </li>
      ))}
    </ul>
    {blocks !== undefined && <div className="blocks"><Said as="p" phrase={block} /><Drawing maker={maker} of={blocks.of} label={block} /></div>}
    </>
  ));
}

/** After the last step: the finished item to compare with, and every check once more. */
export function checksPage(maker: Maker): GuidePage {
  const { base, say } = maker;
  return chapter(maker, 'checks', 'after', (
    <>
      <div className="row">
        <Mark maker={maker} glyph={base.glyphs.plain('look')} label={say(({ words }) => words.t('booklet.compare'))} />
        <Said phrase={say(({ words }) => words.t('booklet.compare'))} />
      </div>
      <Drawing maker={maker} of={{ what: 'finished' }} label={say(finishedAlt)} />
      {checksOf(base.plan).map((check) => <Check key={check.kind === 'measure' ? `${check.name} ${check.value}` : check.name} maker={maker} check={check} />)}
    </>
  ));
}
