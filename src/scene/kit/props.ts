import { moved, type Shape } from '../../model/index.ts';
import type { Step } from '../../plan/index.ts';
import type { SceneBody } from '../types.ts';
import { boxRound } from './extent.ts';
import type { StageHand } from './stage.ts';

/** A block under work that nothing else holds, mm; it stands so far in from the work's ends. */
const BLOCK = 70;
/** Lower than this nothing needs a block, mm. */
const LEAST = 4;

/** The blocks that hold what a step has propped: one under each end of each body, from the bench up. */
export function propBodies(hand: StageHand, step: Step, standing: readonly SceneBody[]): readonly SceneBody[] {
  if (step.props.length === 0) return [];
  const bench = boxRound(standing).least[2];
  return step.props.flatMap((parts, body): readonly SceneBody[] => {
    const { least, most } = boxRound(standing.filter(({ partId }) => partId !== null && parts.includes(partId)));
    const height = least[2] - bench;
    if (!(height > LEAST)) return [];
    const block: Shape = { form: 'plate', width: BLOCK, height: Math.min(BLOCK, Math.max(20, most[1] - least[1])), thickness: height, holes: [] };
    const ends = most[0] - least[0] > 3 * BLOCK ? [least[0] + BLOCK, most[0] - BLOCK] : [(least[0] + most[0]) / 2];
    return ends.map((x, end) => hand.prop({ tool: `block-${body + 1}-${end + 1}` }, block, moved([x, (least[1] + most[1]) / 2, bench]), 'present'));
  });
}
