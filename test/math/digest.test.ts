import { expect, it } from 'vitest';
import { sha256 } from '../../src/math/digest.ts';

it('gives the digests of FIPS 180-4 (NIST example values)', async () => {
  const text = (value: string) => sha256(new TextEncoder().encode(value));
  expect(await text('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  expect(await text('')).toBe('e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855');
});
