import { describe, expect, it } from 'vitest';
import { normalProbability, normalQuantile } from '../../src/math/normal.ts';
import { studentProbability, studentQuantile } from '../../src/math/student.ts';

describe('quantiles', () => {
  // Handbook values; the normal ones to six places, t to four (Montgomery & Runger, Tables II and IV).
  it.each([
    [0.99, 2.326348],
    [0.995, 2.575829],
    [0.999, 3.090232],
    [0.9995, 3.290527],
  ])('normal, %f', (p, z) => {
    expect(normalQuantile(p)).toBeCloseTo(z, 6);
    expect(normalQuantile(1 - p)).toBeCloseTo(-z, 6);
    expect(normalProbability(z)).toBeCloseTo(p, 7);
  });

  it.each([
    [0.975, 1, 12.706],
    [0.975, 2, 4.303],
    [0.975, 6, 2.447],
    [0.975, 16, 2.12],
    [0.995, 10, 3.169],
  ])('t, %f with %d degrees of freedom', (p, freedom, t) => {
    expect(studentQuantile(p, freedom)).toBeCloseTo(t, 3);
    expect(studentQuantile(1 - p, freedom)).toBeCloseTo(-t, 3);
  });

  it('undo each other', () => {
    for (const freedom of [1.5, 4, 40]) {
      for (const p of [0.01, 0.3, 0.9]) {
        expect(studentProbability(studentQuantile(p, freedom), freedom)).toBeCloseTo(p, 9);
      }
    }
  });
});
