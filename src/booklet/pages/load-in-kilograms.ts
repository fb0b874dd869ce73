/** Standard gravity rounded as in the checks, m/s². */
const gravity = 9.81;

/** A safe load (N) as it is printed: kg, rounded down to whole 5 kg, below 10 kg to whole kg. */
export function loadInKilograms(newtons: number): number {
  const kilograms = newtons / gravity + 1e-9;
  return kilograms < 10 ? Math.floor(kilograms) : 5 * Math.floor(kilograms / 5);
}
