import type { Pattern } from '../../../model/index.ts';
import { capHeights } from '../../kit/lettering.ts';
import { circle, figure, toldWidth } from '../../kit/marks.ts';
import { pens } from '../../kit/pens.ts';
import { tell } from '../../../scene/index.ts';
import type { Sign } from './sign.ts';

/** For each diameter a small circle, the diameter, and how many holes have it. */
export function holeSigns({ holes }: Pattern): Sign {
  const diameters = [...new Set(holes.map(({ diameter }) => diameter))].sort((a, b) => a - b);
  return (x, y) => diameters.flatMap((diameter, index) => {
    const [size, times] = [tell.diameter(diameter), tell.times(holes.filter((hole) => hole.diameter === diameter).length)];
    const [wide, many] = [toldWidth(size, capHeights.step, 400), toldWidth(times, capHeights.count, 700)];
    const left = x + index * 48;
    return [
      circle([left + 2, y + 4], 1.6, pens.motion),
      figure(size, [left + 6 + wide / 2, y + 4], capHeights.step),
      figure(times, [left + 10 + wide + many / 2, y + 4], capHeights.count, 700),
    ];
  });
}
