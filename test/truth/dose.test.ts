import { describe, expect, it } from 'vitest';
import { Random } from '../make/random.ts';
import { doseBands, doseCurve, type Trial } from './dose.ts';

function trials(count: number, found: (dose: number, random: Random) => boolean): Trial[] {
  const random = new Random('doses');
  return Array.from({ length: count }, () => {
    const dose = Math.exp(random.between(Math.log(0.01), Math.log(0.4)));
    return { dose, found: found(dose, random) };
  });
}
const logistic = (half: number, slope: number) => (dose: number, random: Random) =>
  random.chance(1 / (1 + Math.exp(-slope * Math.log(dose / half))));

describe('strength at which half are found', () => {
  it.each([
    [0.05, 3],
    [0.1, 6],
    [0.2, 2],
  ])('is found again: %d', (half, slope) => {
    const curve = doseCurve(trials(3000, logistic(half, slope)));
    expect(curve.beyond).toBeNull();
    expect(curve.half / half).toBeGreaterThan(0.93);
    expect(curve.half / half).toBeLessThan(1.07);
    expect(curve.b / slope).toBeGreaterThan(0.85);
    expect(curve.b / slope).toBeLessThan(1.15);
  });

  it('is the step itself where there is one', () => {
    expect(doseCurve(trials(400, (dose) => dose > 0.07)).half).toBeCloseTo(0.07, 2);
  });

  it('lies outside where all or none are found', () => {
    expect(doseCurve(trials(50, () => true)).beyond).toBe('below');
    expect(doseCurve(trials(50, () => false)).beyond).toBe('above');
  });

  it('bands hold every draw once, in order', () => {
    const all = trials(101, (dose) => dose > 0.1);
    const bands = doseBands(all, 8);
    expect(bands.map(({ dose }) => dose)).toEqual(bands.map(({ dose }) => dose).sort((a, b) => a - b));
    expect(bands[0]!.share).toBe(0);
    expect(bands.at(-1)!.share).toBe(1);
  });
});
