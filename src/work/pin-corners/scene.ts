export { cornerPins as scene } from '../../scene/kit/index.ts';
