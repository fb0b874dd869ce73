export { turnWork as scene } from '../../scene/kit/index.ts';
