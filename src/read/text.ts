import { limits } from './limits.ts';

const byteOrderMarks = [
  { encoding: 'utf-8', bytes: [0xef, 0xbb, 0xbf] },
  { encoding: 'utf-16le', bytes: [0xff, 0xfe] },
  { encoding: 'utf-16be', bytes: [0xfe, 0xff] },
] as const;

/**
 * Text of a file: by its byte order mark, else as UTF-8, else (spreadsheets of the West) as Windows-1252.
 * The mark itself is left out.
 */
export function decodeText(bytes: Uint8Array): string {
  const marked = byteOrderMarks.find((mark) => mark.bytes.every((byte, i) => bytes[i] === byte));
  if (marked !== undefined) return new TextDecoder(marked.encoding).decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

/** The beginning of a file as text; null when it is binary. */
export function textHead(bytes: Uint8Array, length: number): string | null {
  const text = decodeText(bytes.subarray(0, length));
  return text.includes('\0') ? null : text.trimStart();
}

/** A name that a file gives to something: without padding, of bounded length; null when nothing is left. */
export function shortName(value: unknown): string | null {
  if (typeof value !== 'string' && typeof value !== 'number') return null;
  const name = String(value).replaceAll('\0', '').trim().slice(0, limits.nameLength);
  return name === '' ? null : name;
}
