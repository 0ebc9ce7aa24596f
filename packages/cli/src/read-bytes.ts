import { open } from 'node:fs/promises';

/** More than any file that is read may hold; what reads it says how much that is [bytes]. */
const mostBytes = 64 * 1024 * 1024;
const pieceBytes = 1024 * 1024;

/**
 * The bytes of a file, of an endless one only its beginning, so that a device or a file that does not fit into memory
 * is refused as too large.
 *
 * @param path - as the user typed it
 * @returns what the file holds, or a little more than any reader accepts
 * @throws Error where it cannot be read
 */
export async function readBytes(path: string): Promise<Uint8Array> {
  const file = await open(path);
  try {
    const pieces: Uint8Array[] = [];
    let length = 0;
    while (length <= mostBytes) {
      const { buffer, bytesRead } = await file.read(Buffer.alloc(pieceBytes));
      if (bytesRead === 0) break;
      pieces.push(buffer.subarray(0, bytesRead));
      length += bytesRead;
    }
    return Buffer.concat(pieces);
  } finally {
    await file.close();
  }
}
