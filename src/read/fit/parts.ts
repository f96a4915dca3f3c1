import { Problem } from '../../problem.ts';
import type { Defect } from '../../types.ts';
import { limits } from '../limits.ts';
import { crc16 } from './crc.ts';
import { type Allowance, freshAllowance, kinds, walk } from './walk.ts';

/** One recording in a FIT file; a file may chain several. */
export interface Part {
  /** Offset of the header. */
  readonly start: number;
  readonly headerSize: number;
  /** End of the last whole message. */
  readonly end: number;
  readonly records: number;
}

const smallestHeader = 12;
const checksumSize = 2;

/**
 * Finds the recordings in a FIT file and how far each is whole: the strict check of header, sizes, framing
 * and checksum, and what to keep of a file that fails it.
 *
 * @throws Problem `format-damaged` when not even a header can be followed, `format-limits` beyond the limits.
 */
export function findParts(bytes: Uint8Array): { parts: readonly Part[]; defects: readonly Defect[] } {
  const allowance = freshAllowance();
  const parts: Part[] = [];
  const defects: Defect[] = [];
  let at = 0;
  while (startsHeader(bytes, at)) {
    if (parts.length === limits.fitParts) {
      throw new Problem({
        code: 'format-limits',
        what: `more than ${limits.fitParts} recordings are chained in this file`,
        hint: 'Hand in the recording of this ride alone',
      });
    }
    const found = readPart(bytes, at, allowance);
    parts.push(found.part);
    if (found.defect !== null) defects.push(found.defect);
    at = found.next;
  }
  if (parts.length === 0) {
    throw new Problem({
      code: 'format-damaged',
      what: 'the header of this FIT file is damaged',
      hint: 'Copy the file from the head unit again',
    });
  }
  if (bytes.subarray(at).some((byte) => byte !== 0)) {
    defects.push({ id: 'trailing-bytes', values: { bytes: bytes.length - at } });
  }
  const withRecords = parts.filter((part) => part.records > 0).length;
  if (withRecords > 1) defects.push({ id: 'chained', values: { parts: withRecords } });
  return { parts, defects };
}

function startsHeader(bytes: Uint8Array, at: number): boolean {
  const size = bytes[at];
  return (
    (size === 12 || size === 14) &&
    at + size <= bytes.length &&
    [0x2e, 0x46, 0x49, 0x54].every((letter, i) => bytes[at + 8 + i] === letter)
  );
}

function readPart(
  bytes: Uint8Array,
  start: number,
  allowance: Allowance,
): { part: Part; defect: Defect | null; next: number } {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const headerSize = bytes[start]!;
  const from = start + headerSize;
  const declaredEnd = from + view.getUint32(start + 4, true);
  const next = declaredEnd + checksumSize;

  const fits = next <= bytes.length;
  const sound =
    fits &&
    headerIsSound(bytes, view, start) &&
    crc16(bytes, start, declaredEnd) === view.getUint16(declaredEnd, true);
  // A recorder that dies leaves the size at 0 or at an earlier state: what follows is more of the same ride.
  const closed = sound || (fits && (next === bytes.length || startsHeader(bytes, next)));

  let records = 0;
  const end = walk(bytes, from, closed ? declaredEnd : bytes.length, allowance, ({ kind }) => {
    if (kind === kinds.record) records++;
  });
  const whole = closed && end === declaredEnd;
  return {
    part: { start, headerSize, end, records },
    defect: defectOf(),
    next: closed ? next : bytes.length,
  };

  function defectOf(): Defect | null {
    if (whole) return sound ? null : { id: 'checksum-wrong', values: {} };
    if (fits && end > declaredEnd) return { id: 'never-closed', values: { kept: records } };
    const held = bytes.length - start;
    // No recording is so long: the number is wrong, and the bytes between were never written.
    if (next - start > limits.fileBytes) {
      return { id: 'size-impossible', values: { stated: next - start, held, kept: records } };
    }
    return { id: 'truncated', values: { kept: records, lostBytes: Math.max(next, bytes.length) - end } };
  }
}

/** The header's own checksum may be left at 0 (FIT Protocol, "File Header"). */
function headerIsSound(bytes: Uint8Array, view: DataView, start: number): boolean {
  if (bytes[start]! < 14) return true;
  const stored = view.getUint16(start + smallestHeader, true);
  return stored === 0 || stored === crc16(bytes, start, start + smallestHeader);
}
