import { pair, work } from '../rules.ts';

/** The brackets screwed to a wall, and each pulled at. */
export const facts = work({
  tools: ['tape', 'pencil', 'drill', 'screwdriver', 'scale'],
  people: 2,
  cautions: ['eyes', 'dust', 'tipping'],
  check: pair('wall-holds'),
  minutes: 25,
  waits: 0,
  captionOf: (detail) => (detail.on === 'wall' ? detail.wall : 'masonry'),
});
