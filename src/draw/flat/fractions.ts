/** A plain share of a whole tube. */
export interface Share {
  readonly numerator: number;
  readonly denominator: number;
}

/** Shares a worker finds by halving a string: no others are worth a picture. */
const shares: readonly Share[] = [
  { numerator: 1, denominator: 1 }, { numerator: 1, denominator: 2 },
  { numerator: 1, denominator: 4 }, { numerator: 3, denominator: 4 },
  { numerator: 1, denominator: 3 }, { numerator: 2, denominator: 3 },
];

/** Half of the finest length we print, mm. */
const tolerance = 0.25;

/**
 * The plain share of a stock tube that a piece is, or null. Equal parts leave a saw kerf between them, so
 * a piece of p/q parts is p (stock − (q − 1) kerf)/q + (p − 1) kerf long; without the kerf it is p/q of the
 * stock. Anything from the one to the other is that share. All mm.
 */
export function plainShare(length: number, stock: number, kerf: number): Share | null {
  return shares.find(({ numerator, denominator }) => {
    const whole = (stock * numerator) / denominator;
    const sawn = (numerator * (stock - (denominator - 1) * kerf)) / denominator + (numerator - 1) * kerf;
    return length >= sawn - tolerance && length <= whole + tolerance;
  }) ?? null;
}
