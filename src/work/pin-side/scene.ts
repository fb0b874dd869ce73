export { panelPins as scene } from '../../scene/kit/index.ts';
