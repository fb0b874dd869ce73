/** Push at a height that tips a body over an edge, N: m g b / h, with b from the edge to its centre of gravity, mm. */
export const tippingForce = (weight: number, arm: number, height: number): number => (weight * arm) / height;

/** Slope on which a body's centre of gravity stands over its edge, rad. */
export const tippingAngle = (arm: number, centreHeight: number): number => Math.atan2(arm, centreHeight);
