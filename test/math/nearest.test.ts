import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editDistance, nearest } from '../../src/math/nearest.ts';

describe('the distance between words', () => {
  // By hand: the least number of letters put in, taken out, changed or swapped with their neighbour.
  it.each([
    ['', '', 0],
    ['limit', 'limit', 0],
    ['limit', '', 5],
    ['limit', 'limits', 1],
    ['limti', 'limit', 1],
    ['kitten', 'sitting', 3],
    ['ca', 'abc', 3],
  ])('%j to %j is %i', (a, b, distance) => {
    expect(editDistance(a, b)).toBe(distance);
  });

  it('is the same both ways, nought only between equals, and at most the longer length', () => {
    const word = fc.string({ maxLength: 12 });
    fc.assert(
      fc.property(word, word, (a, b) => {
        const distance = editDistance(a, b);
        expect(editDistance(b, a)).toBe(distance);
        expect(distance === 0).toBe(a === b);
        expect(distance).toBeLessThanOrEqual(Math.max(a.length, b.length));
        expect(distance).toBeGreaterThanOrEqual(Math.abs(a.length - b.length));
      }),
    );
  });

  it('costs no more for an endless word', () => {
    expect(editDistance('x'.repeat(1e6), 'x'.repeat(64))).toBe(0);
  });
});

describe('the word that was meant', () => {
  const known = ['minimumWatts', 'heartRate', 'second recording', 'none'];
  it.each([
    ['minimumWats', 'minimumWatts'],
    ['minimum-watts', 'minimumWatts'],
    ['heartrate', 'heartRate'],
    ['secondRecording', 'second recording'],
    ['note', 'none'],
    ['heart', 'heartRate'],
    ['banana', null],
    ['x', null],
    ['', null],
  ])('%j is %j', (word, meant) => {
    expect(nearest(word, known)).toBe(meant);
  });
});
