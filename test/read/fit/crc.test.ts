import { expect, test } from 'vitest';
import { crc16 } from '../../../src/read/fit/crc.ts';
import { crc, fitEpoch } from '../fit-bytes.ts';

const digits = [...'123456789'].map((digit) => digit.charCodeAt(0));

// Check value of CRC-16/ARC: Cook G, Catalogue of parametrised CRC algorithms.
test('the checksum has its published check value', () => {
  expect(crc(digits)).toBe(0xbb3d);
  expect(crc16(Uint8Array.from(digits), 0, digits.length)).toBe(0xbb3d);
});

test('bytes of any number from any place have the checksum that they have bit by bit', () => {
  const bytes = Uint8Array.from({ length: 60 }, (_, i) => (i * 151 + 37) % 256);
  for (let from = 0; from < 9; from++) {
    for (let to = from; to <= bytes.length; to++)
      expect(crc16(bytes, from, to)).toBe(crc([...bytes.subarray(from, to)]));
  }
});

// FIT Protocol: date_time counts seconds since UTC 00:00 Dec 31 1989.
test('the epoch of FIT lies 631065600 s after that of Unix', () => {
  expect(Date.UTC(1989, 11, 31) / 1000).toBe(631_065_600);
  expect(fitEpoch).toBe(631_065_600);
});
