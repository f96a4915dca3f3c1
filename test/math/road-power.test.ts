import { expect, it } from 'vitest';
import { airDensity, chainEfficiency, massTerms, type Road } from '../../src/math/road-power.ts';

/** The model solved for mass. */
function massOf(
  { dragArea, ...road }: Road & { readonly dragArea: number },
  watts: number,
  ...ride: [number, number, number]
) {
  const { left, perKg, perArea } = massTerms(road, watts, ...ride);
  return (left - dragArea * perArea) / perKg;
}

// Martin et al. 1998, J Appl Biomech 14:276-291; constructed inputs, power at the cranks computed from the equation.
it.each([
  { watts: 235.42418, massKg: 85, speed: 10, grade: 0, dragArea: 0.32, rolling: 0.004, density: 1.2 },
  { watts: 251.58754, massKg: 90, speed: 11, grade: 0, dragArea: 0.2565, rolling: 0.0032, density: 1.2234 },
  { watts: 346.15052, massKg: 75, speed: 5, grade: 0.08, dragArea: 0.35, rolling: 0.005, density: 1.15 },
])('finds the mass that $watts W move by the published model', ({ watts, massKg, speed, grade, ...road }) => {
  expect(massOf(road, watts * chainEfficiency, speed, grade, 0)).toBeCloseTo(massKg, 3);
});

it('takes what speeds up, wheels included, for no more mass', () => {
  // The first of them, gaining 2 m²/s³: each of its 85 kg takes 2 W more, and 0.14 kg·m² at 0.311 m as much as 1.4475 kg.
  const road = { dragArea: 0.32, rolling: 0.004, density: 1.2 };
  const watts = 235.42418 * chainEfficiency + 2 * (85 + 1.4475);
  expect(massOf(road, watts, 10, 0, 2)).toBeCloseTo(85, 3);
});

it('gives the density of dry and moist air', () => {
  // Computed from the ideal gas constants; dry, then Buck's vapour pressure.
  for (const [celsius, density] of [
    [0, 1.292248],
    [15, 1.224978],
    [20, 1.204085],
  ] as const)
    expect(airDensity(celsius, 101_325, 0)).toBeCloseTo(density, 5);
  expect(airDensity(20, 101_325, 0.5)).toBeCloseTo(1.19883, 4);
  expect(airDensity(30, 101_325, 0.6)).toBeCloseTo(1.1533, 3);
});
