import { isHalfPaper } from '../../papers/index.ts';
import { stitched as stitch, type Stitching } from '../../stitch/index.ts';
import type { BoundCopy } from '../copies.ts';
import { stitched } from './facts.ts';

/** A booklet's stitched copy; none on a paper of which two pages go on no sheet. */
export const stitchedCopies = (booklet: string, paper: string, how: Omit<Stitching, 'paper'>): readonly BoundCopy[] =>
  (isHalfPaper(paper) ? [{ file: `${booklet}${stitched.ending}`, from: (printed) => stitch(printed, { ...how, paper }) }] : []);
