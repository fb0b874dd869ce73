import { cableEnds } from '../../model/cable-ends.ts';
import { part } from '../part.ts';

const KG_PER_MM = 2e-5;

/** A cable that is tied between two pegs: told by the piece that is cut for it. */
export const facts = part(['cable'], {
  mass: ({ length }) => length * KG_PER_MM,
  size: ({ diameter, length }) => [diameter, cableEnds(length).cut],
  isRound: true,
  isLimp: true,
  stock: { oneOf: 'cables' },
  scale: { page: 0.1, small: 0.1, head: 0.12 },
  view: { towardsEye: [0.05, -0.4, 1], up: [0, 1, 0] },
});
