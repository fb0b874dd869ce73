import type { Joining, Model } from '../../src/model/index.ts';

/** A joining as one part that holds others. */
export interface Held {
  readonly by: string;
  readonly parts: readonly string[];
}

/** Every joining of a model, whatever its kind. */
export const heldTogether = ({ joinings }: Pick<Model, 'joinings'>): readonly Held[] => joinings.map(held);

export function held(joining: Joining): Held {
  switch (joining.by) {
    case 'socket': return { by: joining.joint, parts: [joining.joint, joining.tube] };
    case 'tab-pin': return { by: joining.pin, parts: [joining.panel, joining.pin] };
    case 'post-pin': return { by: joining.pin, parts: [joining.post, joining.joint, joining.nut] };
    case 'plate-pin': return { by: joining.pin, parts: [joining.plate, joining.tube, joining.nut] };
    case 'cable': return { by: joining.cable, parts: [joining.cable, ...joining.joints] };
  }
}
