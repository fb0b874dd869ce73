/** A file in a tar archive. */
export interface TarFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

const BLOCK = 512;

/** The plain files of a tar archive in the ustar layout of POSIX.1-1988: a header block, then the bytes in whole blocks. */
export function readTar(archive: Uint8Array): readonly TarFile[] {
  const files: TarFile[] = [];
  let at = 0;
  while (at + BLOCK <= archive.length && archive[at] !== 0) {
    const size = parseInt(field(archive, at + 124, 12), 8) || 0;
    const kind = field(archive, at + 156, 1);
    const body = at + BLOCK;
    if (kind === '0' || kind === '') files.push({ name: field(archive, at, 100), bytes: archive.subarray(body, body + size) });
    at = body + Math.ceil(size / BLOCK) * BLOCK;
  }
  return files;
}

function field(archive: Uint8Array, start: number, length: number): string {
  const text = Buffer.from(archive.subarray(start, start + length)).toString('latin1');
  return text.split('\0', 1)[0] ?? '';
}
