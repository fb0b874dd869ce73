import type { Mark } from '../../scene/index.ts';
import { threadMarks } from '../flat/thread.ts';
import { onPaper, type Fit } from '../kit/fit.ts';
import type { Mark as DrawnMark } from '../kit/marks.ts';
import { project, type Plane } from './plane.ts';

/** The threads of a scene on paper, over their shanks. */
export const threadsOnPaper = (marks: readonly Mark[], plane: Plane, fit: Fit): readonly DrawnMark[] => marks.flatMap((mark) => (mark.mark === 'thread'
  ? threadMarks(onPaper(fit, project(plane, mark.from)), onPaper(fit, project(plane, mark.to)), (mark.diameter * fit.scale) / 2) : []));
