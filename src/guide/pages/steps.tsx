import type { ReactNode } from 'react';
import { caption, countKey, marginParts, oneAtATime, picturesOf, roundGlyph, roundOf, sizeText, stepAlt, toldSpan } from '../../booklet/index.ts';
import { pictureId } from '../../draw/index.ts';
import type { Plan, Step } from '../../plan/index.ts';
import { controlGlyphs } from './control-glyphs.ts';
import { Check } from './checks.tsx';
import type { GuidePage, Maker } from './page.ts';
import { Drawing, Figure, Mark, Said, Small } from './said.tsx';

/** The page of every step, before each run of identical sub-assemblies a page that tells how many there are. */
export function stepPages(maker: Maker): readonly GuidePage[] {
  return maker.base.plan.steps.flatMap((step, index, steps) => [
    ...(step.run !== null && step.run !== steps[index - 1]?.run ? [runPage(maker, step, step.run)] : []),
    stepPage(maker, step, steps[index + 1]),
  ]);
}

export const stepPageId = ({ key }: Step): string => `step-${asAddress(key)}`;

/** In letters, digits and dashes. */
const asAddress = (text: string): string => text.replace(/[^a-z0-9]+/gi, '-');

/** Steps of one run stand together, and those between two runs. */
const groupOf = ({ run, standing }: Step): string => (run !== null ? `run-${run}` : standing.name === 'bench' ? 'bench' : 'item');

function runPage(maker: Maker, step: Step, run: string): GuidePage {
  const { base, say } = maker;
  const label = say(({ words }) => words.t('booklet.run', { count: step.times }));
  return {
    id: `run-${asAddress(step.key)}`,
    group: groupOf(step),
    label,
    sign: { glyph: base.glyphs.plain('again') },
    content: (
      <>
        <h1><span className="numeral"><Figure text={base.words.times(step.times)} /></span></h1>
        <Drawing maker={maker} of={{ what: 'run', run }} label={label} />
        <Said phrase={label} />
      </>
    ),
  };
}

function stepPage(maker: Maker, step: Step, after: Step | undefined): GuidePage {
  const { base, say } = maker;
  const numeral = base.words.number(step.number);
  const alt = say((telling) => stepAlt(telling, step));
  return {
    id: stepPageId(step),
    group: groupOf(step),
    label: say((telling) => telling.words.t('booklet.alt.step', { number: step.number, caption: caption(telling, step) })),
    sign: { numeral },
    times: step.times,
    isStep: true,
    content: (
      <>
        <h1>
          <span className="numeral"><bdi dir="ltr">{numeral}<small> / {base.words.number(base.plan.steps.length)}</small></bdi></span>
          <span className="signed">{step.cautions.map((caution) => <Mark key={caution} maker={maker} kind="sign" glyph={base.glyphs.caution(caution)} label={say(({ words }) => words.t(`cautions.${caution}.sign`))} />)}</span>
        </h1>
        <RoundOf maker={maker} step={step} />
        <div className="work">
          <Said className="caption" phrase={say((telling) => caption(telling, step))} />
          <div className="pictures">{picturesOf(maker, step).map((of) => <Drawing key={pictureId(of)} maker={maker} of={of} label={alt} />)}</div>
          <div className="beside">
            <NewParts maker={maker} step={step} />
            <Strip maker={maker} step={step} />
            {step.check && <Check maker={maker} check={step.check} />}
            {step.run !== null && step.times > 1 && after?.run !== step.run && <Again maker={maker} step={step} />}
          </div>
        </div>
      </>
    ),
  };
}

/** Which side the step folds and the how-manieth that is, and how often the step is done. */
function RoundOf({ maker, step }: { readonly maker: Maker; readonly step: Step }): ReactNode {
  const { base: { plan, glyphs, words }, say } = maker;
  const { times } = step;
  const round = roundOf(plan, step);
  const span = oneAtATime(plan, step);
  if (round === null && times === 1) return null;
  return (
    <div className="row round">
      {round !== null && <Mark maker={maker} glyph={roundGlyph(round.side, words.number(round.number))} label={say((telling) => telling.words.t(`actions.sides.${round.side}`))} />}
      {times > 1 && <Mark maker={maker} glyph={glyphs.plain('again')} label={say((telling) => telling.words.t('booklet.alt.times', { count: times }))} />}
      {times > 1 && <b><Figure text={words.times(times)} /></b>}
      {span !== null && <b><Figure text={toldSpan(words, span)} /></b>}
    </div>
  );
}

/** The parts a step brings, with their counts and sizes. */
function NewParts({ maker, step }: { readonly maker: Maker; readonly step: Step }): ReactNode {
  const { base: { model, words }, say, pictures } = maker;
  const parts = marginParts({ model, pictures }, step);
  if (parts.length === 0) return null;
  return (
    <ul className="new">
      {parts.map(({ said, picture, counts }) => (
        <li key={pictureId(picture)}>
          <Small maker={maker} of={picture} label={say((telling) => said(telling.words))} />
          <div>
            {counts.map((each) => (
              <p key={countKey(each)}><b><Figure text={[words.times(each.count), each.letter ?? []].flat().join(' ')} /></b> <Figure text={sizeText(words, each) ?? ''} /></p>
            ))}
          </div>
        </li>
      ))}
    </ul>
  );
}

/** Action, tools, people and how long to wait. The cautions stand over the picture, where nobody scrolls past them. */
function Strip({ maker, step }: { readonly maker: Maker; readonly step: Step }): ReactNode {
  const { base: { glyphs }, say } = maker;
  return (
    <div className="strip">
      <Mark maker={maker} glyph={glyphs.action(step.action)} label={say(({ words }) => words.t(`actions.names.${step.action}`))} />
      {step.tools.map((tool) => <Mark key={tool} maker={maker} glyph={glyphs.tool(tool)} label={say(({ words }) => words.t(`booklet.tools.${tool}`))} />)}
      <Mark maker={maker} glyph={glyphs.plain(step.people === 2 ? 'two-people' : 'one-person')} label={say(({ words }) => words.t('booklet.people', { count: step.people }))} />
      {step.waits > 0 && <Mark maker={maker} glyph={glyphs.plain('time')} label={say(({ words }) => words.t('booklet.alt.time'))} />}
      {step.waits > 0 && <b><Figure text={maker.base.words.duration(step.waits)} /></b>}
    </div>
  );
}

/** The first of the steps of one run that follow one another up to this one. */
function beginningOf(plan: Plan, step: Step): Step {
  const before = plan.steps[step.number - 2];
  return before === undefined || before.run !== step.run ? step : beginningOf(plan, before);
}

/** At the end of what is done again: back to its first step until all pieces are made. */
function Again({ maker, step }: { readonly maker: Maker; readonly step: Step }): ReactNode {
  const { base: { plan, words }, say } = maker;
  const first = beginningOf(plan, step);
  const label = say((telling) => telling.words.t('guide.again', { number: first.number }));
  return (
    <a className="again" href={`#${stepPageId(first)}`}>
      <span className="heard" data-say={label.number}>{label.text}</span>
      <b><Figure text={words.times(step.times)} /></b>
      <Mark maker={maker} glyph={controlGlyphs.again} />
      <b><bdi dir="ltr">{words.number(first.number)}</bdi></b>
    </a>
  );
}
