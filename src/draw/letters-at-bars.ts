import { placed, type Model } from '../model/index.ts';
import type { Step } from '../plan/index.ts';
import { tell, type EnteredJoint, type Mark, type Scene } from '../scene/index.ts';
import { lettersWritten } from './post-kinds.ts';

/** A step's scene with the letter of each tube that is new in it, where these bear different letters: which goes where. */
export function withLetters(model: Model, step: Step, scene: Scene): Scene {
  const written = lettersWritten(model);
  const fresh = new Set(step.newParts.flatMap(({ ids }) => ids));
  const lettered = scene.bodies.flatMap(({ id, partId, pose }) => {
    const letter = partId === id && fresh.has(partId) ? written.get(partId) : undefined;
    return letter === undefined ? [] : [{ letter, at: placed(pose, [0, 0, 0]) }];
  });
  if (new Set(lettered.map(({ letter }) => letter)).size < 2) return scene;
  return { ...scene, marks: [...scene.marks, ...lettered.map(({ letter, at }): Mark => ({ mark: 'label', at, told: tell.letters(letter) }))] };
}

/** A joint that takes a bar in, with the letter of that: what is shown of it is its end. */
export function withLetterOf(model: Model, { scene, bar, at }: EnteredJoint): Scene {
  const letter = lettersWritten(model).get(bar);
  return letter === undefined ? scene : { ...scene, marks: [...scene.marks, { mark: 'label', at, told: tell.letters(letter) }] };
}
