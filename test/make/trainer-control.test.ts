import { describe, expect, it } from 'vitest';
import { Random } from './random.ts';
import { TrainerControl } from './trainer-control.ts';

describe('a trainer that holds the power', () => {
  it('reaches a new target within seconds, passes it a little, and stays', () => {
    for (let seed = 0; seed < 20; seed++) {
      const trainer = new TrainerControl(new Random(seed));
      trainer.follow(150);
      const answer = Array.from({ length: 40 }, () => trainer.follow(250));
      expect(answer[0]).toBeLessThan(240);
      expect(Math.max(...answer)).toBeGreaterThan(250);
      expect(Math.max(...answer)).toBeLessThan(270);
      expect(answer.at(-1)).toBeCloseTo(250, 0);
    }
  });
});
