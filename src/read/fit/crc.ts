const table = Uint16Array.from({ length: 256 }, (_, byte) => {
  let crc = byte;
  for (let bit = 0; bit < 8; bit++) crc = (crc & 1) === 0 ? crc >>> 1 : (crc >>> 1) ^ 0xa001;
  return crc;
});

/** The checksum of FIT (FIT Protocol, "CRC"): CRC-16 with the reflected polynomial A001, begun at 0. */
export function crc16(bytes: Uint8Array, from: number, to: number): number {
  let crc = 0;
  for (let i = from; i < to; i++) crc = (crc >>> 8) ^ table[(crc ^ bytes[i]!) & 0xff]!;
  return crc;
}
