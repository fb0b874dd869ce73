import type { PictureOf } from '../../draw/index.ts';
import { caption } from '../pages/captions.ts';
import { figure } from '../pages/colophon.tsx';
import { isolate } from '../words/index.ts';
import type { Change, ChangePagesInput, Pieces, StepWork, Told } from './types.ts';

/** Item and size in one phrase. */
export const saidSize = ({ words, item, size }: ChangePagesInput): string =>
  words.t('booklet.item-and-size', { item: words.t(`items.${item}.name`), size: words.t(`items.${item}.sizes.${size}`) });

/** What a change is about: the name that the booklet has for it. */
export function saidName(input: ChangePagesInput, { aspect, name, nth, step }: Change): string {
  const { words, item, plan } = input;
  switch (aspect) {
    case 'measure': return words.t(`parameters.${item}.${name}.label`);
    case 'length': return words.t(`dimensions.${name}`);
    case 'finding': return `${words.t(`findings.${name}`)}${nth > 1 ? ` ${isolate(`(${words.number(nth)})`)}` : ''}`;
    case 'step': {
      const now = plan.steps.find(({ key }) => key === name);
      return now === undefined ? stepSaid(input, step ?? 0) : words.t('booklet.alt.step', { number: now.number, caption: caption(input, now) });
    }
    case 'pattern': return words.t('booklet.chapters.pattern');
    case 'tubes': case 'load': return words.t(`changes.${name}`);
    case 'cut': return words.t(`parts.${name}.name`);
    // What it is is told with its number.
    case 'part': case 'picture': return '';
  }
}

const stepSaid = ({ words }: ChangePagesInput, number: number): string => words.t('changes.step', { number });

/** What it is or was; of the work of a step only what the other side has not. */
export function saidTold(input: ChangePagesInput, change: Change, side: 'before' | 'after'): string {
  const { words } = input;
  const told = change[side];
  if (told === null) return NOTHING;
  switch (told.is) {
    case 'figure': return figureSaid(input, change, told);
    case 'pieces': return told.pieces.map((piece) => piecesSaid(input, piece)).join(BETWEEN);
    case 'judged': return `${words.t(`booklet.colophon.verdicts.${told.verdict}`)}, ${figure(input, told.figure, told.unit)} (${words.t('booklet.colophon.limit')}: ${figure(input, told.limit, told.unit)})`;
    case 'wall': return words.t(`changes.walls.${told.wall ?? 'none'}`);
    case 'place': return stepSaid(input, told.step);
    case 'work': return workSaid(input, told, change[side === 'before' ? 'after' : 'before']);
    case 'content': return side === 'before' ? NOTHING : words.t('changes.other');
  }
}

const NOTHING = '–';
/** Between things that are listed. */
export const BETWEEN = ' · ';

function figureSaid(input: ChangePagesInput, { aspect, name }: Change, { value, unit }: Extract<Told, { readonly is: 'figure' }>): string {
  const { words } = input;
  if (value === null) return words.t('changes.no-load');
  return aspect === 'part' ? words.t(`parts.${name}.counted`, { count: value }) : figure(input, value, unit);
}

/** `4 posts, 312 mm` */
export const piecesSaid = ({ words }: ChangePagesInput, { kind, length, count }: Pieces): string =>
  `${words.t(`parts.${kind}.counted`, { count })}, ${words.measure(length, 'mm', 1)}`;

function workSaid(input: ChangePagesInput, work: StepWork, other: Told | null): string {
  const { words } = input;
  const lists = (of: StepWork): readonly string[] => [
    words.times(of.times),
    words.t('booklet.people', { count: of.people }),
    words.duration(of.minutes),
    ...of.newParts.map(({ kind, count }) => words.t(`parts.${kind}.counted`, { count })),
    ...of.tools.map((tool) => words.t(`booklet.tools.${tool}`)),
    ...of.cautions.map((caution_) => words.t(`cautions.${caution_}.sign`)),
  ];
  const same = new Set(other?.is === 'work' ? lists(other) : []);
  const own = lists(work).filter((each) => !same.has(each));
  return own.length === 0 ? NOTHING : own.join(BETWEEN);
}

/** What a picture shows. */
export function saidPicture(input: ChangePagesInput, of: PictureOf): string {
  const { words, plan } = input;
  switch (of.what) {
    case 'step': case 'step-thumb': case 'step-part': case 'step-blocks': {
      const step = plan.steps.find(({ number }) => number === of.step);
      return step === undefined ? stepSaid(input, of.step) : words.t('booklet.alt.step', { number: of.step, caption: caption(input, step) });
    }
    case 'part': case 'small-part': return words.t(`parts.${of.kind}.counted`, { count: 1 });
    case 'blocks': return words.t('booklet.tools.block');
    case 'supply': case 'small-supply': return words.t(`parts.${of.name}.name`);
    case 'lettered': return words.t('booklet.chapters.dimensions');
    case 'stock': return words.t('booklet.chapters.before');
    case 'cut-bars': return words.t('booklet.chapters.lengths');
    case 'pattern': return words.t('booklet.chapters.pattern');
    case 'crease-section': return words.t('booklet.chapters.creasing');
    case 'plate': return words.t('booklet.chapters.plates');
    default: return saidSize(input);
  }
}
