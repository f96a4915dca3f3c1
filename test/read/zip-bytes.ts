import { deflateRawSync } from 'node:zlib';
import { expect } from 'vitest';
import { crc32 } from '../../src/read/zip.ts';

export interface Packed {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** 0 stored, 8 deflated; others are written as stored. */
  readonly method?: number;
  readonly flags?: number;
  readonly checksum?: number;
  readonly size?: number;
}

/** A ZIP file after APPNOTE 6.3, sections 4.3.7 (member), 4.3.12 (directory) and 4.3.16 (its end). */
export function zip(members: readonly Packed[], comment = ''): Uint8Array {
  const files: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let offset = 0;
  for (const {
    name,
    bytes,
    method = 8,
    flags = 0,
    checksum = crc32(bytes),
    size = bytes.length,
  } of members) {
    const packed = method === 8 ? new Uint8Array(deflateRawSync(bytes)) : bytes;
    const label = new TextEncoder().encode(name);
    // With bit 3 the member's own header leaves its sizes at 0.
    const streamed = (flags & 8) !== 0;
    const own = streamed ? [0, 0, 0] : [checksum, packed.length, size];
    const header = [u32(0x04034b50), u16(20), u16(flags), u16(method), u32(0), ...own.map(u32)];
    const extra = u16(0);
    files.push(joined(...header, u16(label.length), u16(extra.length), label, extra, packed));
    directory.push(
      joined(
        ...[u32(0x02014b50), u16(20), u16(20), u16(flags), u16(method), u32(0), u32(checksum)],
        ...[u32(packed.length), u32(size), u16(label.length), u16(0), u16(0), u16(0), u16(0), u32(0)],
        ...[u32(offset), label],
      ),
    );
    offset += files.at(-1)!.length;
  }
  const listed = joined(...directory);
  const note = new TextEncoder().encode(comment);
  const count = u16(members.length);
  const end = [
    u32(0x06054b50),
    u16(0),
    u16(0),
    count,
    count,
    u32(listed.length),
    u32(offset),
    u16(note.length),
  ];
  return joined(...files, listed, ...end, note);
}

const u16 = (value: number) => Uint8Array.of(value & 0xff, (value >> 8) & 0xff);
const u32 = (value: number) => Uint8Array.of(...[0, 8, 16, 24].map((shift) => (value >>> shift) & 0xff));

export function joined(...pieces: readonly Uint8Array[]): Uint8Array {
  return Uint8Array.from(pieces.flatMap((piece) => [...piece]));
}

export const text = (value: string) => new TextEncoder().encode(value);

/** Expects a Problem of this code whose sentence matches. */
export async function problem(promise: Promise<unknown>, code: string, words: RegExp): Promise<void> {
  const error = await promise.then(
    () => null,
    (thrown: unknown) => thrown,
  );
  expect(error).toMatchObject({ name: 'Problem', code });
  expect((error as Error).message).toMatch(words);
}
