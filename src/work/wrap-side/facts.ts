import { doing, firm, onPanelSide, pair, rule, work } from '../rules.ts';

/** A flap folded round its tube, its tab turned back. */
export const facts = work({
  tools: ['hands'],
  people: 2,
  cautions: ['crush'],
  check: pair('tab-flat'),
  minutes: 3,
  waits: 0,
  askedBy: { feature: 'side', moves: 'flap' },
  shownIn: 'creasing',
  rules: (sides) => [
    firm('laid-before-wrapped', 'A side wraps round its tube.', doing(['lay-frame']), doing(['wrap-side'])),
    ...sides.slice(1).map((side, index) => (index % 2 === 0
      ? rule('side-before-opposite', 'The opposite side pulls the frame to its place.', onPanelSide(sides[index]), onPanelSide(side))
      : rule('short-before-long', 'Short sides first; opposite sides before neighbours keep the frame centred.', onPanelSide(sides[index]), onPanelSide(side)))),
  ],
});
