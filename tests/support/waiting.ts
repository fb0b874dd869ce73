/**
 * The longest wait for something that will come, ms: so long that only what never comes exceeds it, on a machine however
 * slow and busy. Tests wait for what comes, not for time to pass.
 */
export const SLOWEST = 500_000;
