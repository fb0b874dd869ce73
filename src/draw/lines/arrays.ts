/** The number at a place that is known to exist: typed arrays are never sparse. */
export const real = (array: Float64Array, index: number): number => array[index] as number;

/** The whole number at a place that is known to exist. */
export const whole = (array: Int32Array, index: number): number => array[index] as number;

/** The flag at a place that is known to exist. */
export const flag = (array: Uint8Array, index: number): number => array[index] as number;

/** The item at a place that is known to exist. */
export const item = <T>(array: readonly T[], index: number): T => array[index] as T;
