import { expect, it } from 'vitest';
import { originOf } from '../../src/align/origin.ts';

const originAt = (left: number, gain: number, noise = 0.05) => originOf({ left, gain, noise, dynamics: 1 });

it('takes a second with the same work for the same sensor, and one with other work for derived', () => {
  for (const side of [-1, 1]) {
    expect(originAt(0.1, 1 + side * 0.0029)).toBe('same sensor');
    expect(originAt(0.1, 1 + side * 0.0031)).toBe('derived');
  }
});

it('takes it for independent where more of the detail is left over than one sensor leaves', () => {
  expect(originAt(0.149, 1)).toBe('same sensor');
  expect(originAt(0.151, 1)).toBe('independent');
  expect(originAt(0.129, 0.95)).toBe('derived');
  expect(originAt(0.131, 0.95)).toBe('independent');
});

it('lets more be left over of a ride so even that it is next to nothing', () => {
  expect(originAt(0.29, 0.95, 0.0179)).toBe('derived');
  expect(originAt(0.31, 0.95, 0.0179)).toBe('independent');
  expect(originAt(0.29, 0.95, 0.0181)).toBe('independent');
});

it('says nothing where there was too little to tell', () => {
  expect(originOf(null)).toBe('unknown');
});
