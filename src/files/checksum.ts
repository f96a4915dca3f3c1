import { createHash } from 'node:crypto';

/**
 * SHA-256 in lower-case hex of what was read from disk. The web-standard way hands the bytes to another thread and
 * waits: where thousands of small files are looked at one after the other, that costs more than the sum itself.
 */
export function checksum(content: Uint8Array | string): string {
  return createHash('sha256').update(content).digest('hex');
}
