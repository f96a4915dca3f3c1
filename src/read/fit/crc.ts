/** Bytes that are taken in one step. */
const stride = 8;

/** What a byte does to the checksum: 256 values for one that ends a step, then for one with one behind it, … */
const table = new Uint16Array(stride * 256);
for (let byte = 0; byte < 256; byte++) {
  let crc = byte;
  for (let behind = 0; behind < stride; behind++) {
    for (let bit = 0; bit < 8; bit++) crc = (crc & 1) === 0 ? crc >>> 1 : (crc >>> 1) ^ 0xa001;
    table[(behind << 8) | byte] = crc;
  }
}

/**
 * The checksum of FIT (FIT Protocol, "CRC"): CRC-16 with the reflected polynomial A001, begun at 0. Eight bytes a
 * step, each looked up by itself (Kounavis & Berry 2008, IEEE Trans Comput 57:1550).
 */
export function crc16(bytes: Uint8Array, from: number, to: number): number {
  let crc = 0;
  let i = from;
  for (; i + stride <= to; i += stride) {
    crc =
      table[0x700 | ((crc & 0xff) ^ bytes[i]!)]! ^
      table[0x600 | ((crc >>> 8) ^ bytes[i + 1]!)]! ^
      table[0x500 | bytes[i + 2]!]! ^
      table[0x400 | bytes[i + 3]!]! ^
      table[0x300 | bytes[i + 4]!]! ^
      table[0x200 | bytes[i + 5]!]! ^
      table[0x100 | bytes[i + 6]!]! ^
      table[bytes[i + 7]!]!;
  }
  for (; i < to; i++) crc = (crc >>> 8) ^ table[(crc ^ bytes[i]!) & 0xff]!;
  return crc;
}
