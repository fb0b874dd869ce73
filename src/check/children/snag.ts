import { hasCaps, placed, type Part, type Vec3 } from '../../model/index.ts';
import { judge } from '../judge.ts';
import { distance, idsOf, partsOf } from '../parts.ts';
import { standingOut } from '../rules.ts';
import type { Case, Check } from '../types.ts';

/** A cable's loop lies on its stud nearer than this to the stud's end, mm. */
const ON_STUD = 40;

/**
 * How far what a joint has and nothing uses stands out of it, mm: studs without a cable (nothing where caps cover them)
 * and sockets without a tube. Clothes and cords catch on them.
 */
export const snagPoint: Check = (given) => {
  const { model } = given;
  const snag = standingOut(given);
  const { studReach, stop, socketDepth, sleeveDiameter } = model.kit.joint;
  const joints = partsOf(model, 'joint');
  const bare = [
    ...joints.filter((joint) => model.kit.caps?.studs !== true && hasBareStud(given, joint)).map(({ id }) => ({ id, reach: studReach })),
    ...joints.filter((joint) => hasBareSocket(given, joint)).map(({ id }) => ({ id, reach: stop + socketDepth })),
  ];
  return [judge({
    name: 'snag-point', figure: Math.max(0, ...bare.map(({ reach }) => reach - sleeveDiameter / 2)), limit: snag.value, bound: 'most', unit: 'mm',
    source: snag.source, parts: bare.length > 0 ? [...new Set(bare.map(({ id }) => id))] : idsOf(model, 'joint'), otherwise: 'caution',
  })];
};

/** Whether one of a joint's two sockets holds no tube. */
const hasBareSocket = ({ model }: Case, { id }: Part): boolean => model.joinings.filter((joining) => joining.by === 'socket' && joining.joint === id).length < 2;

/** Whether a stud of a joint, along its own −x or −y, holds no loop. */
function hasBareStud({ model }: Case, joint: Part): boolean {
  const { studReach } = model.kit.joint;
  const loops = partsOf(model, 'cable').flatMap(({ shape, pose }) =>
    (shape.form === 'cable' ? [placed(pose, [0, 0, 0]), placed(pose, [shape.length, 0, 0])] : []));
  const studs: readonly Vec3[] = [placed(joint.pose, [-studReach, 0, 0]), placed(joint.pose, [0, -studReach, 0])];
  return studs.some((stud) => !loops.some((loop) => distance(loop, stud) < ON_STUD));
}

/** Open ends of sawn glass-fibre tubes within reach: the posts' upper ends. The work caps them, unless the kit has no caps for them. */
export const tubeEnds: Check = ({ model, limits: { openEnds } }) => [judge({
  name: 'tube-ends', figure: hasCaps(model) ? 0 : partsOf(model, 'post').length, limit: openEnds.value, bound: 'most', unit: '1',
  source: openEnds.source, parts: idsOf(model, 'post'), otherwise: 'caution',
})];
