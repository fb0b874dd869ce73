import { doing, firm, pair, work } from '../rules.ts';

/** Holes for the pins of a tab, through tab and panel where they lie: the second one presses the tab down. */
export const facts = work({
  tools: ['tape', 'pencil', 'sticky-tape', 'board', 'punch', 'mallet'],
  // A tab that lies on its panel on the bench is hit against the bench; the wall of a box has nothing behind it.
  without: (_, { patterns }) => (patterns.some(({ form }) => form === 'tray') ? [] : ['board']),
  people: 2,
  cautions: ['eyes', 'crush'],
  check: pair('tab-pressed'),
  minutes: 3,
  waits: 0,
  shownIn: 'creasing',
  sizes: ({ kit }) => ({ punch: [kit.panelPin.diameter] }),
  rules: [firm('punched-before-pinned', 'A pin needs its hole.', 'place', doing('punch-tab'), doing('pin-side', 'pin-corners'))],
});
