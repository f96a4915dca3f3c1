import { KiB } from '../sizes.ts';
import type { Recording } from '../types.ts';
import { findHeadings, firstColumns } from './csv/headings.ts';
import { textHead } from './text.ts';

export type Content = Recording['format'] | 'gzip' | 'zip' | Unreadable;
/** `table`: cells in columns, but not those of a recording. */
export type Unreadable = 'table' | 'web page' | 'other text' | 'nothing' | 'other bytes';

/** Bytes looked at to find the root element or the headings. */
const head = 64 * KiB;
const prolog = /^(?:\s|<\?[^>]*>|<!--[\s\S]*?-->|<![^>]*>)*/;
const rootName = /^<(?:[\w.-]+:)?([\w.-]+)/;

/** What a file holds, told by its content alone: its name may say anything. */
export function sniff(bytes: Uint8Array): Content {
  if (bytes.length === 0) return 'nothing';
  // The four letters stand at byte 8 of every FIT header, whatever its length (12 or 14).
  if (startsWith(bytes, [0x2e, 0x46, 0x49, 0x54], 8)) return 'fit';
  if (startsWith(bytes, [0x1f, 0x8b, 8])) return 'gzip';
  if (startsWith(bytes, [0x50, 0x4b, 3, 4]) || startsWith(bytes, [0x50, 0x4b, 5, 6])) return 'zip';
  const text = textHead(bytes, head);
  if (text === null) return 'other bytes';
  if (text.startsWith('<')) return sniffMarkup(text);
  if (text.startsWith('{') || text.startsWith('[')) return 'other text';
  if (findHeadings(text) !== null) return 'csv';
  return firstColumns(text).length > 0 ? 'table' : 'other text';
}

function sniffMarkup(text: string): Content {
  const root = rootName.exec(text.replace(prolog, ''))?.[1]?.toLowerCase();
  if (root === 'trainingcenterdatabase') return 'tcx';
  if (root === 'gpx') return 'gpx';
  return root === 'html' ? 'web page' : 'other text';
}

function startsWith(bytes: Uint8Array, signature: readonly number[], at = 0): boolean {
  return signature.every((byte, i) => bytes[at + i] === byte);
}
