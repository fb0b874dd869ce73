import type { Model } from '../model/index.ts';
import type { Hardware } from './flat/index.ts';

/** The tube and the pin that a section through a wrapped flap shows. */
export const hardwareOf = (model: Model): Hardware => ({
  tube: { outside: model.kit.tube.outsideDiameter, inside: model.kit.tube.outsideDiameter - 2 * model.kit.tube.wall },
  pin: model.kit.panelPin,
});
