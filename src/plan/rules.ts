import type { FlatPattern, Side } from '../model/index.ts';
import { sideOf, type Job } from './jobs.ts';
import type { Action } from './types.ts';

/** An ordering: every job that `first` picks before every job that `then` picks. */
export interface Rule {
  readonly name: string;
  readonly reason: string;
  /** The work itself asks for it: a cut panel before a creased one, a hole before its pin. No wish overrides it. */
  readonly firm: boolean;
  /** Holds within one run, within one run and on one flat panel where both work on one, or everywhere. */
  readonly within: 'run' | 'plate' | 'item';
  readonly first: (job: Job) => boolean;
  readonly then: (job: Job) => boolean;
}

type Pick = Rule['first'];

/** Jobs of these actions, of one side when it is told. */
const doing = (actions: readonly Action[], side: Side | null = null): Pick =>
  (job) => actions.includes(job.action) && (side === null || sideOf(job.detail) === side);

const rule = (name: string, reason: string, first: Pick, then: Pick): Rule => ({ name, reason, firm: false, within: 'run', first, then });
const firm = (name: string, reason: string, first: Pick, then: Pick): Rule => ({ ...rule(name, reason, first, then), firm: true });

/** Neighbours of a chain, as one rule a link. */
const chain = (name: string, reason: string, picks: readonly Pick[], make: typeof rule = rule): Rule[] =>
  picks.slice(1).map((pick, index) => make(name, reason, picks[index] ?? pick, pick));

const onPosts = (action: Action, side: Side): Pick => (job) => job.action === action && job.detail.on === 'side' && job.detail.side === side;
const inRun: Pick = (job) => job.run !== null;
const wrapping: readonly Action[] = ['wrap-side', 'pin-ends', 'pin-middle'];

/** Common practice, no source, but for what geometry proves as well; sides in the order they are wrapped. */
export function rulesFor(pattern: FlatPattern, sides: readonly Side[] = sidesInOrder(pattern)): readonly Rule[] {
  return [...panelRules(), ...frameRules(), ...sideRules(sides), ...itemRules(), ...plateRules()];
}

const panelRules = (): Rule[] => [
  firm('blank-first', 'Every line is measured from the edges of the blank.', doing(['cut-blank']), (job) => job.standing === 'bench' && job.action !== 'cut-blank' && inRun(job)),
  ...chain('marked-before-cut', 'Every line is measured from a square blank and from the inside line; a cut cannot be taken back.',
    (['cut-blank', 'mark-inside', 'mark-creases', 'mark-notches', 'punch-holes', 'cut-notches'] as const).map((action) => doing([action]))),
  rule('notched-before-creased', 'Flaps fold freely only when the corners are out.', doing(['cut-notches']), doing(['crease'])),
  rule('half-cut-last', 'A half-cut panel bends while it is handled.', doing(['crease']), doing(['half-cut'])),
];

const frameRules = (): Rule[] => [
  { ...firm('tubes-cut-first', 'All frames need their tubes.', doing(['cut-tubes']), (job) => inRun(job) || job.action === 'mark-posts'), within: 'item' },
  firm('panel-ready-before-frame-is-laid', 'A panel under the frame can no longer be marked, cut or creased.', doing(['cut-notches', 'punch-holes', 'crease', 'half-cut']), doing(['lay-frame'])),
  rule('panel-before-frame', 'The frame lies on the bench that the panel is marked on.', doing(['half-cut']), doing(['push-tubes'])),
  rule('frame-before-panel', 'The frame is squared before it is wrapped.', doing(['close-frame']), doing(['lay-frame'])),
  firm('laid-before-wrapped', 'A side wraps round its tube.', doing(['lay-frame']), doing(['wrap-side'])),
  firm('wrapped-before-turned', 'Tabs and pins are reached from above.', doing(wrapping), doing(['turn-deck'])),
];

function sideRules(sides: readonly Side[]): Rule[] {
  const names = ['side-before-opposite', 'short-before-long', 'side-before-opposite'];
  const reasons = [
    'The opposite side pulls the frame to its place.',
    'Short sides first; opposite sides before neighbours keep the frame centred.',
    'The opposite side pulls the frame to its place.',
  ];
  return [
    ...sides.slice(1).map((side, index) => rule(names[index] ?? '', reasons[index] ?? '', doing(wrapping, sides[index] ?? side), doing(wrapping, side))),
    ...sides.flatMap((side) => chain('ends-before-middle', 'Pins at both ends stop the tab from creeping.', wrapping.map((action) => doing([action], side)))),
  ];
}

const itemRules = (): Rule[] => [
  { ...firm('decks-before-posts', 'Posts run through all decks, and a deck on its posts can no longer be wrapped.', inRun, doing(['stand-decks', 'push-posts'])), within: 'item' },
  rule('spacing-before-drilling', 'Decks are set to the marks, then drilled.', doing(['mark-posts']), doing(['stand-decks'])),
  ...(['front', 'back'] as const).flatMap((side) => chain('drilled-before-pinned', 'A pin needs its hole.',
    [onPosts('push-posts', side), onPosts('drill', side), onPosts('pin-posts', side)], firm)),
  firm('one-side-before-turning', 'Two pinned posts hold the decks while the work is turned.', onPosts('pin-posts', 'front'), doing(['turn-item'])),
  firm('turned-before-the-other-side', 'Posts are pushed in on the upper side.', doing(['turn-item']), (job) => job.action === 'set-rails' || onPosts('push-posts', 'back')(job)),
  firm('pinned-before-standing', 'Unpinned decks slide down the posts.', doing(['pin-posts']), doing(['stand-up'])),
  firm('standing-before-cables', 'Cables are drawn tight on a frame that stands square.', doing(['stand-up']), doing(['brace'])),
  rule('cables-last', 'Cables are drawn tight on the upright, finished frame.', doing(['stand-up', 'hold-panel', 'pin-panel']), doing(['brace'])),
  rule('back-before-ends', 'The back is the longest face and squares the frame first.', doing(['brace'], 'back'), (job) => job.action === 'brace' && sideOf(job.detail) !== 'back'),
  rule('back-before-ends', 'Opposite faces follow each other.', doing(['brace'], 'left'), doing(['brace'], 'right')),
];

const plateRules = (): Rule[] => [
  firm('plates-cut-first', 'A plate is cut and punched before it is held to its tubes.', doing(['cut-panel']), doing(['hold-panel'])),
  rule('plates-on-the-bench', 'All bench work is done before the frames are joined.', doing(['cut-panel']), doing(['mark-posts'])),
  firm('standing-before-plates', 'Plates are pinned to a frame that stands square.', doing(['stand-up']), doing(['hold-panel'])),
  ...chain('drilled-before-pinned', 'A pin needs its hole.', [doing(['hold-panel']), isPlateDrill, doing(['pin-panel'])], firm)
    .map((held): Rule => ({ ...held, within: 'plate' })),
];

const isPlateDrill: Pick = (job) => job.action === 'drill' && job.detail.on === 'plate';

/** Whether a link of a rule may join two jobs: same run, and the same flat panel where the rule is one panel's. */
export function mayLink(held: Rule, first: Job, then: Job): boolean {
  if (first.key === then.key || (held.within !== 'item' && first.run !== then.run)) return false;
  return held.within !== 'plate' || plateOf(first) === plateOf(then);
}

const plateOf = ({ detail }: Job): string | null => (detail.on === 'plate' ? detail.plate : null);

/**
 * Sides in the order they are wrapped: from the shortest to the longest, each pair of opposite sides together,
 * unless the designer wishes `wrap-side` of one before another.
 */
export function sidesInOrder(pattern: FlatPattern, wishes: readonly { readonly first: string; readonly then: string }[] = []): readonly Side[] {
  const usual = [...pattern.flaps].sort((a, b) => (a.to - a.from) - (b.to - b.from)).map((flap) => flap.side);
  const waits = (side: Side, left: readonly Side[]): boolean =>
    wishes.some(({ first, then }) => then === `wrap-side:${side}` && left.some((other) => first === `wrap-side:${other}`));
  const pairs = [usual.slice(0, 2), usual.slice(2)];
  const waitsForOthers = (pair: readonly Side[]): boolean => pair.some((side) => waits(side, usual.filter((other) => !pair.includes(other))));
  const [one = [], other = []] = waitsForOthers(pairs[0] ?? []) && !waitsForOthers(pairs[1] ?? []) ? [...pairs].reverse() : pairs;
  return [one, other].flatMap((pair) => (waits(pair[0] ?? 'left', pair) ? [...pair].reverse() : pair));
}
