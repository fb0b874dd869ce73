import { placed } from '../../model/index.ts';
import { judge } from '../judge.ts';
import { idsOf } from '../parts.ts';
import { pinnedPlates } from '../stand/stand-input.ts';
import type { Case, Check, Finding } from '../types.ts';
import { mattressOf } from './mattress.ts';
import { plateGaps, type Gap } from './plate-gaps.ts';

/**
 * From the top of the mattress to the top of a guard's upper tube, mm: the lowest of the three highest, as a lower one is
 * the way in. The panel stands a little higher and is not counted.
 */
export const guardHeight: Check = (given) => {
  const { model, limits } = given;
  const mattress = mattressOf(given)?.thickness ?? null;
  const guards = pinnedPlates(model);
  if (mattress === null || guards.length === 0) return [];
  const tops = guards.map(({ tubes }) => Math.max(...tubes.map(({ tube }) => placed(tube.pose, [0, 0, 0])[2])) + model.kit.tube.outsideDiameter / 2);
  const guarding = tops.toSorted((a, b) => b - a).slice(0, limits.guardSides.value);
  return [judge({
    name: 'guard-height', figure: Math.min(...guarding) - Math.max(...model.deckTops) - mattress, limit: limits.guardHeight.value, bound: 'least', unit: 'mm',
    source: `over the mattress, ${limits.guardHeight.source}`, parts: guards.map(({ plate }) => plate.id),
  })];
};

/**
 * Gap between the ends of the guard's tubes and the end structure, mm: the tubes stand in the sockets of the posts'
 * joints, so that nothing but the play of a tube cut short is left, and that inside the socket.
 */
export const guardEnd: Check = (given) => {
  const { model, limits } = given;
  if (mattressOf(given) === null || pinnedPlates(model).length === 0) return [];
  return [judge({
    name: 'guard-end', figure: model.kit.joint.endPlay, limit: limits.guardEnd.value, bound: 'most', unit: 'mm',
    source: `a guard runs on to the bed’s ends, ${limits.guardEnd.source}`, parts: pinnedPlates(model).flatMap(({ tubes }) => tubes.map(({ tube }) => tube.id)),
  })];
};

/**
 * The widest opening in the guards against the wedge block that must not pass, mm; an opening that lets it pass must let
 * the sphere pass too. The wedge's own breadth is not among what was read, so this is never more than a caution.
 */
export const guardOpening: Check = (given) => {
  const { wedgeWidth, sphere } = given.limits;
  const [widest] = openings(given).toSorted((a, b) => b.narrow - a.narrow);
  if (!widest) return [];
  const clear = widest.narrow >= sphere.value;
  return [judge({
    name: 'guard-opening', figure: widest.narrow, limit: clear ? sphere.value : wedgeWidth.value, bound: clear ? 'least' : 'most', unit: 'mm',
    source: `${wedgeWidth.source}; where it passes a sphere of ${sphere.value} mm must too, ${sphere.source}; between ${widest.what}`,
    parts: widest.parts, otherwise: 'caution',
  })];
};

/** The openings over the mattress against the gaps between slats of children's cots, mm: from memory, a caution only. */
export const guardSlat: Check = (given) => {
  const { slatLeast, slatMost } = given.limits;
  const judged = openings(given).flatMap(({ narrow, parts }): Finding[] => {
    const under = narrow < (slatLeast.value + slatMost.value) / 2;
    return [judge({
      name: 'guard-slat', figure: narrow, limit: under ? slatLeast.value : slatMost.value, bound: under ? 'least' : 'most', unit: 'mm',
      source: `between slats ${slatLeast.value} to ${slatMost.value} mm, ${slatLeast.source}`, parts, otherwise: 'caution',
    })];
  });
  return judged.toSorted((a, b) => a.margin - b.margin).slice(0, 1);
};

/** The openings that the guards leave over the mattress: beside the posts and round the corners. */
function openings(given: Case): readonly Gap[] {
  if (mattressOf(given) === null || idsOf(given.model, 'flat-panel').length === 0) return [];
  return plateGaps(given.model).filter(({ what }) => what === 'panel and post' || what === 'panel and panel');
}
