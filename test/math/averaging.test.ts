import { expect, test } from 'vitest';
import { fitAveraging, wanderRatio } from '../../src/math/averaging.ts';

const pedalling = { exponent: 1, spread: 0.15 };

test('without averaging, 1/f noise scatters alike at every span; averaging takes the short ones away', () => {
  for (const span of [4, 8, 16]) expect(wanderRatio(0.01, span, 'plain')).toBeCloseTo(1, 2);
  // Far below the averaging a trace is all but straight: differences grow in proportion to the span.
  expect(wanderRatio(1000, 2, 'plain')).toBeGreaterThan(0.5);
  expect(wanderRatio(1000, 2, 'plain')).toBeLessThan(0.56);
});

test('a fit returns the seconds that the ratios were made from, within its interval', () => {
  for (const averaging of ['plain', 'weighted'] as const) {
    for (const seconds of [1, 3, 5.5, 10, 22]) {
      const ratios = [2, 4, 8].map((span) => ({
        span,
        ratio: wanderRatio(seconds, span, averaging),
        error: 0.02,
      }));
      const fit = fitAveraging(ratios, averaging, pedalling);
      expect(Math.abs(Math.log(fit.seconds / seconds))).toBeLessThan(0.04);
      expect(fit.low).toBeLessThanOrEqual(seconds);
      expect(fit.high).toBeGreaterThanOrEqual(seconds);
    }
  }
});

test('what fits badly is known badly', () => {
  const ratios = (last: number) => [
    { span: 2, ratio: 0.65, error: 0.02 },
    { span: 4, ratio: 0.82, error: 0.02 },
    { span: 8, ratio: last, error: 0.02 },
  ];
  const good = fitAveraging(ratios(0.94), 'plain', pedalling);
  const bad = fitAveraging(ratios(0.75), 'plain', pedalling);
  expect(bad.misfit).toBeGreaterThan(good.misfit);
  expect(bad.high / bad.low).toBeGreaterThan(good.high / good.low);
});

test('a race whose surges make the spectrum steeper is not taken for averaging', () => {
  const surging = [2, 4, 8].map((span) => ({
    span,
    ratio: wanderRatio(1, span, 'weighted', 1.4),
    error: 0.03,
  }));
  expect(fitAveraging(surging, 'weighted', pedalling).low).toBe(1);
  expect(fitAveraging(surging, 'weighted', { exponent: 1, spread: 0.01 }).low).toBeGreaterThan(1.3);
});
