import type { Report } from '../../check/index.ts';
import type { PlainGlyph } from './types.ts';

type People = Report['advice']['people'];

const signs = { adults: 'for-adults', anyone: 'for-anyone', pupils: 'for-pupils' } as const satisfies Partial<Record<People, PlainGlyph>>;

/** The sign, and key under `booklet`, that tells for whom an item is and for whom not; null for a bed, whose pair of pictures tells its child. */
export function signForWhom(people: People): (typeof signs)[keyof typeof signs] | null {
  return people === 'small-children' ? null : signs[people];
}
