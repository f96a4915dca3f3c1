import type { Random } from './random.ts';

/**
 * A trainer that holds a power does so with a motor and a controller: a new target is reached within seconds
 * and overshot by some percent (a second-order answer; common practice, no source).
 */
export class TrainerControl {
  private readonly frequency: number;
  private readonly damping: number;
  private level = Number.NaN;
  private speed = 0;

  constructor(random: Random) {
    this.frequency = random.between(0.6, 1.3);
    this.damping = random.between(0.55, 0.85);
  }

  /** Power (W) that the trainer asks of the legs one second later. */
  follow(target: number): number {
    if (target === 0 || Number.isNaN(this.level)) {
      this.level = target;
      this.speed = 0;
      return target;
    }
    const step = 0.125;
    for (let k = 0; k < 8; k++) {
      const pull = this.frequency * this.frequency * (target - this.level);
      this.speed += step * (pull - 2 * this.damping * this.frequency * this.speed);
      this.level += step * this.speed;
    }
    return Math.max(20, this.level);
  }
}
