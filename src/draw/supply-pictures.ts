import { standstill, type Solids } from '../model/index.ts';
import { suppliesOf, type Plan, type Supply } from '../plan/index.ts';
import { STANDARD_VIEW } from '../scene/index.ts';
import { coilPicture, screwPicture } from './flat/index.ts';
import { composeAlone, type LineDrawer } from './picture/index.ts';
import { pictureAs } from './picture-of.ts';
import type { Picture } from './types.ts';

/** mm of paper for one mm of what is taken beside the parts: on the page of parts, as fittings, and at the head of a step. */
export const SUPPLY_SCALE = { page: 0.5, head: 0.22 } as const;

/** Each thing that the steps take beside the item's parts, the first size of it: on the page of parts, and small. */
export function supplyPictures(plan: Pick<Plan, 'steps'>, solids: Solids, draw: LineDrawer): readonly Picture[] {
  const all = suppliesOf(plan);
  return all.filter(({ name }, index) => all.findIndex((other) => other.name === name) === index).flatMap((supply) => {
    const { shape, isThreaded } = supply;
    const at = (scale: number) => (shape.form === 'cable' ? coilPicture(scale / SUPPLY_SCALE.head) : isThreaded && shape.form === 'pin' ? screwPicture(shape, scale) : composeAlone(bodyOf(supply, solids), STANDARD_VIEW, scale, draw, Infinity));
    return [pictureAs({ what: 'supply', name: supply.name }, at(SUPPLY_SCALE.page)), pictureAs({ what: 'small-supply', name: supply.name }, at(SUPPLY_SCALE.head))];
  });
}

const bodyOf = ({ name, shape }: Supply, solids: Solids) =>
  ({ id: name, partId: null, kind: 'tool', mesh: solids.mesh(shape), pose: standstill, look: 'present' }) as const;
