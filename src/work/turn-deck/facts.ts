import { doing, firm, onPanelSide, work } from '../rules.ts';

/** A deck turned the way it is used. */
export const facts = work({
  tools: ['hands'],
  people: 2,
  cautions: ['crush'],
  check: null,
  minutes: 1,
  waits: 0,
  rules: () => [firm('wrapped-before-turned', 'Tabs and pins are reached from above.', onPanelSide(), doing(['turn-deck']))],
});
