/**
 * Euler–Bernoulli beams, from any handbook of strength of materials. Loads in N or N/mm, lengths in mm,
 * moduli in N/mm², second moments in mm⁴; deflections in mm, moments in N·mm.
 */

/** Middle of a simply supported beam under a line load: 5 w L⁴ / 384 E I. */
export const lineLoadDeflection = (lineLoad: number, span: number, modulus: number, second: number): number =>
  (5 * lineLoad * span ** 4) / (384 * modulus * second);

/** Middle of the same beam under a load spread over a stretch in its middle: P (8 L³ − 4 L c² + c³) / 384 E I; c = L is the line load. */
export const middleLoadDeflection = (load: number, span: number, stretch: number, modulus: number, second: number): number => {
  const on = Math.min(stretch, span);
  return (load * (8 * span ** 3 - 4 * span * on ** 2 + on ** 3)) / (384 * modulus * second);
};

/** Mean over the whole length of the same beam: w L⁴ / 120 E I (the integral of its curve over L). */
export const meanLineLoadDeflection = (lineLoad: number, span: number, modulus: number, second: number): number =>
  (lineLoad * span ** 4) / (120 * modulus * second);

/** Greatest moment of a simply supported beam under a line load: w L² / 8. */
export const lineLoadMoment = (lineLoad: number, span: number): number => (lineLoad * span ** 2) / 8;

/** Greatest moment of a simply supported beam under a load spread over a stretch in its middle: P (L / 4 − c / 8). */
export const middleLoadMoment = (load: number, span: number, stretch: number): number => load * (span / 4 - Math.min(stretch, span) / 8);
