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

/** The same for a load on a stretch c in the middle, mm/N: (8 L³ − 4 L c² + c³) / 384 D + (L / 4 − c / 8) / S. */
export function middleGive(strip: Strip, stretch: number): number {
  const [span, on] = [strip.span, Math.min(stretch, strip.span)];
  return (8 * span ** 3 - 4 * span * on ** 2 + on ** 3) / 384 / bendingStiffness(strip) + (span / 4 - on / 8) / shearStiffness(strip);
}

/** Stress in the faces under a load on a stretch c in the middle, N/mm²: M / (b h t_f) with M = P (L / 4 − c / 8). */
export const middleFaceStress = (load: number, strip: Strip, stretch: number): number =>
  (load * (strip.span / 4 - Math.min(stretch, strip.span) / 8)) / (strip.width * strip.faceDistance * strip.skin);

/** Shear in the core round a square load, N/mm²: P / (4 c h). */
export const punchingShear = (load: number, strip: Strip, stretch: number): number => load / (4 * stretch * strip.faceDistance);

/**
 * Shares of a load that strips crossing in their middles carry, so that both sag alike (the crossing strips of
 * Rankine and Grashof; for an even load, equal widths and stiff cores L₂⁴ / (L₁⁴ + L₂⁴)). Without twisting: the corners are cut out.
 */
export function crossingShares(gives: readonly number[]): readonly number[] {
  const holds = gives.map((each) => 1 / each);
  const sum = holds.reduce((total, hold) => total + hold, 0);
  return holds.map((hold) => hold / sum);
}
