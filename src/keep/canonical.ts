/**
 * A text that is equal for equal data: all that JSON has, and maps, sets, byte arrays, undefined, −0 and numbers that
 * are not finite besides. @throws RangeError on functions, which cannot be compared.
 */
export const canonical = (value: unknown): string => JSON.stringify(value, told);

function told(this: unknown, _name: string, value: unknown): unknown {
  switch (typeof value) {
    case 'undefined': return { is: 'undefined' };
    case 'number': return plainNumber(value);
    case 'bigint': return { is: 'bigint', of: String(value) };
    case 'function': case 'symbol': throw new RangeError(`a ${typeof value} is no part of a key: only plain data is`);
    default: return collection(value);
  }
}

const plainNumber = (value: number): unknown => (Number.isFinite(value) && !Object.is(value, -0) ? value : { is: 'number', of: Object.is(value, -0) ? '-0' : String(value) });

function collection(value: unknown): unknown {
  if (value instanceof Map) return { is: 'map', of: [...value] };
  if (value instanceof Set) return { is: 'set', of: [...value] };
  if (value instanceof Uint8Array) return { is: 'bytes', of: Buffer.from(value).toString('base64') };
  return value;
}
