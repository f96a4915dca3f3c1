import { expect, it } from 'vitest';
import { airDensity, chainEfficiency, movedMass, roadPower } from '../../src/math/road-power.ts';

it('gives the worked values of the published model', () => {
  // Martin et al. 1998, J Appl Biomech 14:276-291; constructed inputs, computed from the equation.
  const at = (massKg: number, dragArea: number, rolling: number, density: number) => ({
    massKg,
    dragArea,
    rolling,
    density,
  });
  expect(roadPower(at(85, 0.32, 0.004, 1.2), 10, 0)).toBeCloseTo(235.42418, 4);
  expect(roadPower(at(90, 0.2565, 0.0032, 1.2234), 11, 0)).toBeCloseTo(251.58754, 4);
  expect(roadPower(at(75, 0.35, 0.005, 1.15), 5, 0.08)).toBeCloseTo(346.15052, 4);
  expect(roadPower(at(85, 0.32, 0.004, 1.2), 10, 0, 12)).toBeCloseTo(323.17172, 4);
});

it('solves the same model for mass', () => {
  const road = { massKg: 75, dragArea: 0.35, rolling: 0.005, density: 1.15 };
  expect(movedMass(road, roadPower(road, 5, 0.08) * chainEfficiency, 5, 0.08, 0)).toBeCloseTo(75, 9);
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
