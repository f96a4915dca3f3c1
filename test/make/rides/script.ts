import type { Random } from '../random.ts';
import type { Demand, RideKind } from '../ride.ts';

/** A demand under construction: arrays of one value a second, filled stretch by stretch. */
export class Script {
  readonly seconds: number;
  readonly effort: Float64Array;
  readonly allOut: Uint8Array;
  readonly grade: Float64Array;
  readonly shelter: Float64Array;
  readonly stops: (readonly [number, number])[] = [];
  selfPaced: readonly [from: number, to: number] | null = null;

  constructor(seconds: number) {
    this.seconds = seconds;
    this.effort = new Float64Array(seconds);
    this.allOut = new Uint8Array(seconds);
    this.grade = new Float64Array(seconds);
    this.shelter = new Float64Array(seconds).fill(1);
  }

  /** Effort from `from` to `to` (half open), going straight from `first` to `last` watts. */
  line(from: number, to: number, first: number, last = first): void {
    const end = Math.min(to, this.seconds);
    for (let i = Math.max(0, from); i < end; i++) {
      this.effort[i] = first + ((last - first) * (i - from)) / Math.max(1, to - from);
    }
  }

  /** Everything the legs give. */
  sprint(from: number, seconds: number): void {
    this.allOut.fill(1, Math.max(0, from), Math.min(this.seconds, from + seconds));
  }

  coast(from: number, seconds: number): void {
    const [start, end] = [Math.max(0, from), Math.min(this.seconds, from + seconds)];
    if (start >= end) return;
    this.effort.fill(0, start, end);
    this.allOut.fill(0, start, end);
  }

  stop(from: number, seconds: number): void {
    this.coast(from - 4, seconds + 4);
    this.stops.push([from, Math.min(this.seconds, from + seconds)]);
  }

  /** Multiplies the effort of a stretch by a function of the second within it. */
  scale(from: number, to: number, factor: (second: number) => number): void {
    for (let i = Math.max(0, from); i < Math.min(to, this.seconds); i++) this.effort[i]! *= factor(i - from);
  }

  /** Rolling road: grade wanders within ± a few percent between turning points. */
  roll(from: number, to: number, steepness: number, random: Random): void {
    let grade = 0;
    for (let i = from; i < to; ) {
      const next = random.normal(0, steepness);
      const length = random.integer(25, 150);
      for (let j = 0; j < length && i < to && i < this.seconds; j++, i++) {
        this.grade[i] = grade + ((next - grade) * j) / length;
      }
      grade = next;
    }
  }

  done(
    rest: Pick<Demand, 'raceKind' | 'indoors' | 'control' | 'window' | 'roughness'> & { kind: RideKind },
  ): Demand {
    return {
      ...rest,
      effort: this.effort,
      allOut: this.allOut,
      grade: this.grade,
      shelter: this.shelter,
      stops: this.stops,
      selfPaced: this.selfPaced,
    };
  }
}

/** Easy spinning up to a share of CP, before anything that counts. */
export function warmUp(script: Script, seconds: number, cp: number, random: Random): void {
  script.line(0, seconds, cp * random.between(0.35, 0.45), cp * random.between(0.6, 0.75));
  if (seconds > 300 && random.chance(0.5)) {
    const at = random.integer(180, seconds - 60);
    script.line(at, at + random.integer(10, 25), cp * random.between(1.1, 1.5));
  }
}

export function coolDown(script: Script, from: number, cp: number): void {
  script.line(from, script.seconds, cp * 0.45, cp * 0.3);
}
