import { describe, expect, it } from 'vitest';
import { nextSpeed, steadyPower } from './road.ts';

describe('power and speed on the road (Martin et al. 1998, J Appl Biomech 14:276-291)', () => {
  // Computed from the published equation with F_w 0.0044 m², E_c 0.976, g 9.81 m/s².
  it.each([
    [{ mass: 85, cdA: 0.32, crr: 0.004, density: 1.2 }, 10, 0, 235.42418],
    [{ mass: 90, cdA: 0.2565, crr: 0.0032, density: 1.2234 }, 11, 0, 251.58754],
    [{ mass: 75, cdA: 0.35, crr: 0.005, density: 1.15 }, 5, 0.08, 346.15052],
  ])('worked value %#', (load, speed, grade, watts) => {
    expect(steadyPower(load, speed, grade)).toBeCloseTo(watts, 4);
  });

  it('settles at the speed that its power holds', () => {
    const load = { mass: 80, cdA: 0.3, crr: 0.004, density: 1.2 };
    for (const grade of [-0.01, 0, 0.07]) {
      let speed = 4;
      for (let i = 0; i < 600; i++) speed = nextSpeed(load, speed, 260, grade, 1, 1);
      expect(steadyPower(load, speed, grade)).toBeCloseTo(260, 1);
    }
  });
});
