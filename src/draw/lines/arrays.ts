/** The number at a place that is known to exist: typed arrays are never sparse. */
export const real = (array: Float64Array, index: number): number => array[index] as number;

/** The whole number at a place that is known to exist. */
export const whole = (array: Int32Array, index: number): number => array[index] as number;

/** The flag at a place that is known to exist. */
export const flag = (array: Uint8Array, index: number): number => array[index] as number;

/** The item at a place that is known to exist. */
export const item = <T>(array: readonly T[], index: number): T => array[index] as T;

/** Real numbers that are added one by one, in a typed array that grows. */
export class Reals {
  values = new Float64Array(256);
  count = 0;

  push(value: number): void {
    if (this.count === this.values.length) {
      const grown = new Float64Array(2 * this.count);
      grown.set(this.values);
      this.values = grown;
    }
    this.values[this.count++] = value;
  }

  /** All that were added, in an array of that length. */
  done(): Float64Array {
    return this.values.slice(0, this.count);
  }
}

/** Whole numbers of up to 32 bits that are added one by one, in a typed array that grows. */
export class Wholes {
  values = new Int32Array(256);
  count = 0;

  push(value: number): void {
    if (this.count === this.values.length) {
      const grown = new Int32Array(2 * this.count);
      grown.set(this.values);
      this.values = grown;
    }
    this.values[this.count++] = value;
  }

  /** All that were added, in an array of that length. */
  done(): Int32Array {
    return this.values.slice(0, this.count);
  }
}
