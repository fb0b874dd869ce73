/**
 * A strip of sandwich panel with thin faces, simply supported, under an even load: the faces carry the
 * bending, the core the shear (thin-face theory of any sandwich handbook). mm, N, N/mm².
 */
export interface Strip {
  readonly span: number;
  readonly width: number;
  readonly skin: number;
  /** Between the middles of the faces: core + one skin. */
  readonly faceDistance: number;
  readonly skinModulus: number;
  readonly coreShearModulus: number;
}

/** D = E t_f h² b / 2, N·mm². */
const bendingStiffness = (strip: Strip): number =>
  (strip.skinModulus * strip.skin * strip.faceDistance ** 2 * strip.width) / 2;

/** S = b h G, N. */
const shearStiffness = (strip: Strip): number =>
  strip.width * strip.faceDistance * strip.coreShearModulus;

/** Share of the bending in the sag of the middle, mm: 5/384 · P L³ / D. */
export const bendingSag = (load: number, strip: Strip): number =>
  (5 / 384) * (load * strip.span ** 3) / bendingStiffness(strip);

/** Share of the core's shear in the sag of the middle, mm: 1/8 · P L / S. */
export const shearSag = (load: number, strip: Strip): number =>
  (load * strip.span) / 8 / shearStiffness(strip);

/** Stress in the faces, N/mm²: M / (b h t_f) with M = P L / 8. */
export const faceStress = (load: number, strip: Strip): number =>
  (load * strip.span) / 8 / (strip.width * strip.faceDistance * strip.skin);

/** Shear in the core at the supports, N/mm²: (P / 2) / (b h). */
export const coreShear = (load: number, strip: Strip): number =>
  load / 2 / (strip.width * strip.faceDistance);

/** How far the middle sags for each newton spread over the strip, mm/N. */
export const give = (strip: Strip): number => bendingSag(1, strip) + shearSag(1, strip);

/**
 * Shares of an even load that strips crossing in their middles carry, so that both sag alike (the crossing strips of
 * Rankine and Grashof; for equal widths and stiff cores L₂⁴ / (L₁⁴ + L₂⁴)). Without twisting: the corners are cut out.
 */
export function crossingShares(strips: readonly Strip[]): readonly number[] {
  const holds = strips.map((strip) => 1 / give(strip));
  const sum = holds.reduce((total, hold) => total + hold, 0);
  return holds.map((hold) => hold / sum);
}
