import type { PatternFlap, Shape, Side } from '../../model/index.ts';
import type { Piece } from './convex.ts';
import { chainPieces, chainStages, raisedAt } from './chains.ts';
import { flapPieces, flapStages } from './flaps.ts';

/** A flap of a panel as the plan needs it, whatever pattern it is of. In its panel's coordinates. */
export interface FlapForm {
  readonly name: string;
  readonly side: Side;
  /** Ends along its side, mm. */
  readonly from: number;
  readonly to: number;
  readonly creases: number;
  readonly halfCuts: number;
  /** The stage at which it comes to hand: 0 flat, or its wall turned up already. */
  readonly raised: number;
  /** Stages from there to home (1), so close that no strip bulges out of the hull of two by more than `BULGE`. */
  readonly stages: readonly number[];
  /** Convex bodies at a stage, as many and in the same order at every stage. */
  readonly piecesAt: (stage: number) => readonly Piece[];
  /** Flaps of one family on opposite sides are each other's half turn. */
  readonly family: string;
}

/** A strip between two stages of a fold bulges out of the hull of both by no more than this, mm: under what counts as a touch. */
export const BULGE = 0.2;

/** The flaps of a shape; none where it is no panel that is folded. */
export function flapForms(shape: Shape): readonly FlapForm[] {
  switch (shape.form) {
    case 'panel': return shape.pattern.flaps.map((flap): FlapForm => ({
      name: flap.side, side: flap.side, from: flap.from, to: flap.to, creases: flap.creases.length, halfCuts: 1, raised: 0, family: `${flap.from} ${flap.to}`,
      stages: flapStages(flap, BULGE), piecesAt: (stage) => flapPieces(shape.pattern, flap, stage),
    }));
    case 'folded': return shape.pattern.flaps.filter(goesRound).map((flap): FlapForm => {
      const [first] = flap.strips;
      return {
        name: flap.name, side: flap.side, from: first?.start ?? 0, to: first?.end ?? 0, family: flap.name,
        creases: flap.bends.filter(({ is }) => is === 'crease').length, halfCuts: flap.bends.filter(({ is }) => is === 'half-cut').length,
        raised: raisedAt(flap), stages: chainStages(flap, BULGE), piecesAt: chainPieces(shape.pattern, flap, flap.strips.slice(flap.wall > 0 ? 1 : 0)),
      };
    });
    default: return [];
  }
}

/** A wall of a box that no rim is folded from goes round no bar. */
const goesRound = ({ bends, wall }: PatternFlap): boolean => bends.length > wall;
