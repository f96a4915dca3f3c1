import type { Random } from './random.ts';
import type { Rider } from './rider.ts';
import { optimumCadence } from './torque.ts';

/**
 * Gears that step by about 8 %, shifted when cadence strays too far from what feels right: so cadence
 * follows speed between shifts and jumps at them, and power and cadence are coupled as loosely as on the road.
 */
export class Gears {
  /** Seconds in which a single shift under load was made. */
  readonly shifts: number[] = [];
  private readonly rider: Rider;
  private readonly random: Random;
  /** Metres of road a turn of the cranks. */
  private readonly developments: number[] = [];
  private index = 12;
  private lastShift = -10;
  private lastTurn = -10;
  private cadence = 0;

  constructor(rider: Rider, random: Random) {
    this.rider = rider;
    this.random = random;
    for (let metres = 1.9; metres < 10.8; metres *= random.between(1.06, 1.1)) this.developments.push(metres);
  }

  /**
   * Cadence (rpm) of this second, asked for while pedalling.
   *
   * @param speed m/s
   * @param intensity power over CP
   * @param sway slow taste for a higher or lower cadence, SD 1
   */
  turn(
    second: number,
    speed: number,
    intensity: number,
    grade: number,
    allOut: boolean,
    sway: number,
  ): number {
    const best = optimumCadence(this.rider.torque);
    const hard = Math.min(intensity, 1.6) - 0.8;
    const easyGrade = 90 * Math.max(0, grade - 0.02);
    // A sprint begins in the gear at hand and is wound up, some turns a second.
    const target = allOut
      ? Math.min(best * 0.97, Math.max(this.rider.cadence, this.cadence) + 5)
      : this.rider.cadence + this.rider.cadenceAnswer * hard - easyGrade + 3.5 * sway;
    const band = this.rider.cadenceBand;
    const stray = this.turnsAt(speed) - target;
    const fresh = second - this.lastTurn > 1;
    if (Math.abs(stray) > band && (fresh || second - this.lastShift > 1)) {
      const steps =
        Math.abs(stray) > 2 * band ? Math.max(1, Math.min(6, Math.round(Math.abs(stray) / 7))) : 1;
      this.index = Math.max(
        0,
        Math.min(this.developments.length - 1, this.index + (stray > 0 ? steps : -steps)),
      );
      if (steps < 3 && !fresh && this.random.chance(0.7)) this.shifts.push(second);
      this.lastShift = second;
    }
    // Legs follow the gear with a little delay, and do not spin beyond what anyone can.
    const wanted = Math.max(32, Math.min(this.turnsAt(speed), best * 1.35));
    this.cadence = fresh ? wanted : this.cadence + 0.75 * (wanted - this.cadence);
    this.lastTurn = second;
    return this.cadence;
  }

  private turnsAt(speed: number): number {
    return (speed * 60) / this.developments[this.index]!;
  }
}
