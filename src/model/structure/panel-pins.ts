import type { Kit } from '../../read/index.ts';
import { makePart } from '../make-part.ts';
import { chained, columnOf, facing, moved } from '../pose.ts';
import { jointPin, wingNut } from '../fasteners.ts';
import type { Connection, Part, PartPlace, Pose, Vec3 } from '../types.ts';
import { cross, plus, tidy, times } from '../vectors.ts';
import type { PlannedPanel } from './types.ts';

/** The tab lies a hair over the panel, and the head a hair over the tab, mm. */
const HEAD_LIFT = 0.05;

/** A barbed pin with its head on a face, own z away from it; `face` is the pose of that face at the pin. */
export function panelPin(kit: Kit, plan: PlannedPanel, id: string, place: PartPlace, face: Pose): Part {
  return { ...makePart(kit, id, 'panel-pin', place, { form: 'pin', ...kit.panelPin }, chained(face, moved([0, 0, HEAD_LIFT]))), group: plan.group };
}

/** How a barbed pin holds a tab: it leaves the way its head looks. */
export const heldByPin = (pin: Part, panel: string, flap: string): Connection => ({ is: 'panel-pin', pin: pin.id, panel, flap, out: tidy(columnOf(pin.pose, 2)) });

/** A pin with its nut through a panel and a bar: the head on the panel `head` mm from the bar's axis, the nut on the bar's far side. */
export function throughPin(kit: Kit, labels: { readonly id: string; readonly nut: string; readonly place: PartPlace }, at: Vec3, out: Vec3, along: Vec3, head: number, tube: number): readonly [Part, Part] {
  const x = times(along, -1);
  const back = times(out, -1);
  return [
    jointPin(kit, labels.id, labels.place, facing(plus(at, times(out, head)), x, cross(out, x), out)),
    wingNut(kit, labels.nut, labels.place, facing(plus(at, times(back, tube / 2)), x, cross(back, x), back)),
  ];
}
