import type { Model, Solids } from '../model/index.ts';
import type { Step } from '../plan/index.ts';
import { braceScene } from './steps/brace.ts';
import { drillScene } from './steps/drill.ts';
import { foldScene } from './steps/fold.ts';
import { slideScene } from './steps/slide.ts';
import { standDecksScene } from './steps/stand-decks.ts';
import { turnScene } from './steps/turn.ts';
import type { Scene } from './types.ts';

/** The scene of a step, or null when the step is told by a flat drawing (work on the bench). */
export function stepScene(model: Model, step: Step, solids: Solids): Scene | null {
  if (step.standing.name === 'bench') return null;
  switch (step.action) {
    case 'wrap-side': return foldScene(model, step, solids);
    case 'turn-deck':
    case 'turn-item':
    case 'stand-up': return turnScene(model, step, solids);
    case 'stand-decks': return standDecksScene(model, step, solids);
    case 'drill': return drillScene(model, step, solids);
    case 'brace': return braceScene(model, step, solids);
    default: return slideScene(model, step, solids);
  }
}
