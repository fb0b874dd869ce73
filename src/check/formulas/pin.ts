/** Two shear planes of a round pin, N: 2 · 0.6 A f_up / γ_M2, EN 1993-1-8 Table 3.10. */
export const doubleShearResistance = (diameter: number, strength: number, materialFactor: number): number =>
  (2 * 0.6 * (Math.PI / 4) * diameter ** 2 * strength) / materialFactor;

/** A pin through both walls of a tube, N: 2 · d · t · f, f the pin-bearing strength of EN 13706. */
export const wallBearingResistance = (diameter: number, wall: number, bearingStrength: number): number =>
  2 * diameter * wall * bearingStrength;
