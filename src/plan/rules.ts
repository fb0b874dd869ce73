import type { FlatPattern, Side } from '../model/index.ts';
import type { OrderWish } from '../read/index.ts';
import type { Job } from './jobs.ts';

/** An ordering: every job that `first` picks before every job that `then` picks. */
export interface Rule {
  readonly name: string;
  readonly reason: string;
  /** The work itself asks for it: a cut panel before a creased one, a hole before its pin. No wish overrides it. */
  readonly firm: boolean;
  readonly first: (job: Job) => boolean;
  readonly then: (job: Job) => boolean;
}

const keyed = (...keys: readonly string[]) => (job: Job): boolean =>
  keys.some((key) => job.key === key || job.key.startsWith(`${key}:`));

/** Good practice, which a designer may override. */
const rule = (name: string, reason: string, first: Rule['first'], then: Rule['then']): Rule => ({ name, reason, firm: false, first, then });

const firm = (name: string, reason: string, first: Rule['first'], then: Rule['then']): Rule => ({ ...rule(name, reason, first, then), firm: true });


/** Neighbouring keys of a chain, as one rule a link. */
const chain = (name: string, reason: string, keys: readonly string[], make: typeof rule = rule): Rule[] =>
  keys.slice(1).map((key, index) => make(name, reason, keyed(keys[index] ?? ''), keyed(key)));

/** Common practice, no source, but for what geometry proves as well; sides in the order they are wrapped. */
export function rulesFor(pattern: FlatPattern, sides: readonly Side[] = sidesInOrder(pattern)): readonly Rule[] {
  return [
    firm('blank-first', 'Every line is measured from the edges of the blank.', keyed('cut-blank'), (job) => job.standing === 'bench' && job.run !== null && job.key !== 'cut-blank'),
    ...chain('marked-before-cut', 'Every line is measured from a square blank and from the inside line; a cut cannot be taken back.',
      ['cut-blank', 'mark-inside', 'mark-creases', 'mark-notches', 'punch-holes', 'cut-notches']),
    rule('notched-before-creased', 'Flaps fold freely only when the corners are out.', keyed('cut-notches'), keyed('crease')),
    rule('half-cut-last', 'A half-cut panel bends while it is handled.', keyed('crease'), keyed('half-cut')),
    firm('tubes-cut-first', 'All frames need their tubes.', keyed('cut-tubes'), (job) => job.run !== null || job.key === 'mark-posts'),
    firm('panel-ready-before-frame-is-laid', 'A panel under the frame can no longer be marked, cut or creased.', keyed('cut-notches', 'punch-holes', 'crease', 'half-cut'), keyed('lay-frame')),
    rule('panel-before-frame', 'The frame lies on the bench that the panel is marked on.', keyed('half-cut'), keyed('push-tubes:short')),
    rule('frame-before-panel', 'The frame is squared before it is wrapped.', keyed('close-frame'), keyed('lay-frame')),
    firm('laid-before-wrapped', 'A side wraps round its tube.', keyed('lay-frame'), keyed('wrap-side')),
    ...sideRules(sides),
    firm('wrapped-before-turned', 'Tabs and pins are reached from above.', keyed('wrap-side', 'pin-ends', 'pin-middle'), keyed('turn-deck')),
    firm('decks-before-posts', 'Posts run through all decks, and a deck on its posts can no longer be wrapped.', (job) => job.run !== null, keyed('stand-decks', 'push-posts')),
    rule('spacing-before-drilling', 'Decks are set to the marks, then drilled.', keyed('mark-posts'), keyed('stand-decks')),
    ...['front', 'back'].flatMap((side) => chain('drilled-before-pinned', 'A pin needs its hole.',
      [`push-posts:${side}`, `drill:${side}`, `pin-posts:${side}`], firm)),
    firm('one-side-before-turning', 'Two pinned posts hold the decks while the work is turned.', keyed('pin-posts:front'), keyed('turn-item')),
    firm('turned-before-the-other-side', 'Posts are pushed in on the upper side.', keyed('turn-item'), keyed('push-posts:back')),
    firm('pinned-before-standing', 'Unpinned decks slide down the posts.', keyed('pin-posts'), keyed('stand-up')),
    rule('cables-last', 'Cables are drawn tight on the upright, finished frame.', keyed('stand-up'), keyed('brace')),
    ...chain('back-before-ends', 'The back is the longest face and squares the frame first.', ['brace:back', 'brace:left', 'brace:right']),
  ];
}

/**
 * Sides in the order they are wrapped: from the shortest to the longest, each pair of opposite sides together,
 * unless the designer wishes `wrap-side` of one before another.
 */
export function sidesInOrder(pattern: FlatPattern, wishes: readonly Pick<OrderWish, 'first' | 'then'>[] = []): readonly Side[] {
  const usual = [...pattern.flaps].sort((a, b) => (a.to - a.from) - (b.to - b.from)).map((flap) => flap.side);
  const waits = (side: Side, left: readonly Side[]): boolean =>
    wishes.some(({ first, then }) => then === `wrap-side:${side}` && left.some((other) => first === `wrap-side:${other}`));
  const pairs = [usual.slice(0, 2), usual.slice(2)];
  const waitsForOthers = (pair: readonly Side[]): boolean => pair.some((side) => waits(side, usual.filter((other) => !pair.includes(other))));
  const [one = [], other = []] = waitsForOthers(pairs[0] ?? []) && !waitsForOthers(pairs[1] ?? []) ? [...pairs].reverse() : pairs;
  return [one, other].flatMap((pair) => (waits(pair[0] ?? 'left', pair) ? [...pair].reverse() : pair));
}

function sideRules(sides: readonly Side[]): Rule[] {
  const workOn = (side: Side) => keyed(`wrap-side:${side}`, `pin-ends:${side}`, `pin-middle:${side}`);
  const names = ['side-before-opposite', 'short-before-long', 'side-before-opposite'];
  const reasons = [
    'The opposite side pulls the frame to its place.',
    'Short sides first; opposite sides before neighbours keep the frame centred.',
    'The opposite side pulls the frame to its place.',
  ];
  return [
    ...sides.slice(1).map((side, index) => rule(names[index] ?? '', reasons[index] ?? '', workOn(sides[index] ?? side), workOn(side))),
    ...sides.flatMap((side) => chain('ends-before-middle', 'Pins at both ends stop the tab from creeping.',
      [`wrap-side:${side}`, `pin-ends:${side}`, `pin-middle:${side}`])),
  ];
}
