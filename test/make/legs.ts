import { type Ability, ceiling, nextBalance, sprintCeiling, tired } from './ability.ts';
import type { Demand } from './ride.ts';
import type { Rider } from './rider.ts';

/** What the rider can and wants to give, second by second. */
export class Legs {
  /** Work capacity left, J. */
  left: number;
  private readonly rider: Rider;
  private readonly demand: Demand;
  private ability: Ability;
  /** Minutes so far, each second weighted with the square of its intensity. */
  private stress = 0;
  private spentOut = false;
  private before = 0;

  constructor(rider: Rider, demand: Demand) {
    this.rider = rider;
    this.demand = demand;
    this.ability = rider.ability;
    this.left = rider.ability.wPrime;
  }

  /** Power (W) that can be reached now. Who has run dry stays below CP for a while. */
  most(allOut: boolean): number {
    const most = allOut ? sprintCeiling(this.ability, this.left) : ceiling(this.ability, this.left);
    return this.spentOut ? Math.min(most, this.ability.cp * 0.94) : most;
  }

  /** Power (W) that the rider goes for in this second, given what the ride asks. */
  wish(second: number, asked: number, allOut: boolean): number {
    if (second % 30 === 0) this.ability = tired(this.rider.ability, this.stress, this.rider.tiring);
    let wish = allOut ? this.most(true) : Math.min(asked, 0.97 * this.most(false), this.prudent(second));
    if (asked === 0 && !allOut) wish = 0;
    // Power rises by some hundred watts a second at most, and falls at once.
    if (wish > this.before) wish = Math.min(wish, this.before + 90 + 0.22 * this.rider.ability.pMax);
    this.before = wish;
    return wish;
  }

  /** Books one second at this mean power. */
  spend(power: number): void {
    const { cp, wPrime } = this.rider.ability;
    this.left = nextBalance(this.ability, this.left, power, 1);
    this.stress += (power * power) / (cp * cp) / 60;
    if (this.left < 0.04 * wPrime) this.spentOut = true;
    else if (this.left > 0.2 * wPrime) this.spentOut = false;
  }

  /** What the rider allows themselves, W. */
  private prudent(second: number): number {
    const { cp, wPrime } = this.ability;
    const share = this.left / wPrime;
    const { selfPaced, window } = this.demand;
    const [from, to] = selfPaced ?? [0, 0];
    // Nobody follows every surge on their last legs: they sit in, or are left behind.
    if (selfPaced === null || second < from || second >= window[1]) return cp * (0.75 + 1.6 * share);
    if (second < to) return cp * (0.91 + 0.5 * share);
    // What is left, short of a last kick, spread over the seconds to the line.
    return cp + (this.left - 0.15 * wPrime) / (window[1] - second + 5);
  }
}
