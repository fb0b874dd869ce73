import { chain, doing, pair, work } from '../rules.ts';

/** The pins of a tab between its ends. */
export const facts = work({
  tools: ['mallet'],
  people: 1,
  cautions: [],
  check: pair('pin-home'),
  minutes: 1,
  waits: 0,
  askedBy: { feature: 'side', moves: 'middle-pins' },
  shownIn: 'creasing',
  counts: ['panel-pin'],
  rules: (sides) => sides.flatMap((side) => chain('ends-before-middle', 'Pins at both ends stop the tab from creeping.',
    (['wrap-side', 'pin-ends', 'pin-middle'] as const).map((action) => doing([action], side)))),
});
