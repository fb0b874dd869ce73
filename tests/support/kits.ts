import type { Kit } from '../../src/read/index.ts';
import { rack } from './rack.ts';

/** What a wrap hangs on, mm and rad. */
export interface WrapChoice {
  readonly tube?: number;
  readonly clearance?: number;
  readonly thickness?: number;
  readonly skin?: number;
  readonly neutralLayer?: number;
  readonly turnBack?: number;
  readonly tightest?: number;
  readonly tab?: number;
}

/** The stall kit with another tube, panel or practice of folding. */
export function kitFor(choice: WrapChoice): Kit {
  const { kit } = rack;
  return {
    ...kit,
    tube: { ...kit.tube, outsideDiameter: choice.tube ?? kit.tube.outsideDiameter },
    panel: {
      ...kit.panel,
      thickness: choice.thickness ?? kit.panel.thickness,
      skin: choice.skin ?? kit.panel.skin,
      neutralLayer: choice.neutralLayer ?? kit.panel.neutralLayer,
      tightestCrease: choice.tightest ?? kit.panel.tightestCrease,
    },
    practice: {
      ...kit.practice,
      wrapClearance: choice.clearance ?? kit.practice.wrapClearance,
      turnBack: choice.turnBack ?? kit.practice.turnBack,
      tab: choice.tab ?? kit.practice.tab,
    },
  };
}
