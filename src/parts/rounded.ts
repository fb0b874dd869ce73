/** A measure as pages tell it, mm. */
export const rounded = (measure: number): number => Math.round(10 * measure) / 10;
