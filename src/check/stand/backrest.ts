import { endsOfTube, placed, type Model, type Vec3 } from '../../model/index.ts';
import { partsOf } from '../parts.ts';
import { pinnedPlates } from './stand-input.ts';

/** A flat panel over a seat and the two tubes that carry it. */
export interface Backrest {
  readonly plateId: string;
  readonly width: number;
  readonly tubeIds: readonly string[];
  readonly tubes: readonly { readonly ends: readonly [Vec3, Vec3]; readonly height: number }[];
  /** From the panel to the tubes: the way a back pushes. */
  readonly outwards: readonly [number, number];
}

/** Only a seat has backrests. */
export function backrestsOf(model: Model): readonly Backrest[] {
  if (model.use !== 'seat') return [];
  const [middleX, middleY] = planMiddle(model);
  return pinnedPlates(model).flatMap(({ plate, tubes }) => {
    if (plate.shape.form !== 'plate') return [];
    const [x, y] = placed(plate.pose, [0, 0, 0]);
    const across = Math.abs(x - middleX) > Math.abs(y - middleY);
    return [{
      plateId: plate.id, width: plate.shape.width, tubeIds: tubes.map(({ tube }) => tube.id),
      tubes: tubes.flatMap(({ tube }) => {
        const ends = endsOfTube(tube);
        return ends ? [{ ends, height: placed(tube.pose, [0, 0, 0])[2] }] : [];
      }),
      outwards: across ? [Math.sign(x - middleX), 0] as const : [0, Math.sign(y - middleY)] as const,
    }];
  });
}

/** Middle of the posts in plan, mm. */
export function planMiddle(model: Model): readonly [number, number] {
  const posts = partsOf(model, 'post').map((post) => placed(post.pose, [0, 0, 0]));
  const mean = (axis: 0 | 1): number => posts.reduce((sum, post) => sum + post[axis], 0) / Math.max(1, posts.length);
  return [mean(0), mean(1)];
}
