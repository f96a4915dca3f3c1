import type { Lap, Totals } from '../../types.ts';
import { decimal } from '../number.ts';
import { combineTotals, stated } from '../totals.ts';

/** Elements of a TCX lap beside its track, and the total that each states. HeartRate elements hold a "Value". */
const totalOf: ReadonlyMap<string, keyof Totals> = new Map([
  ['totaltimeseconds', 'timerS'],
  ['distancemeters', 'distanceM'],
  ['averageheartratebpm', 'meanHeartRate'],
  ['maximumheartratebpm', 'maxHeartRate'],
  ['cadence', 'meanCadence'],
  ['avgwatts', 'meanPower'],
  ['maxwatts', 'maxPower'],
]);

interface OpenLap {
  readonly from: number;
  readonly totals: { -readonly [K in keyof Totals]?: number };
  tracks: number;
}

/** Collects the laps of a TCX activity, one after another. Times are clock times, s. */
export class Laps {
  readonly #whole: { readonly from: number; readonly to: number; readonly totals: Totals }[] = [];
  #open: OpenLap | null = null;

  /** Whether a lap is open. */
  get open(): boolean {
    return this.#open !== null;
  }

  begin(from: number): void {
    this.#open = { from, totals: {}, tracks: 0 };
  }

  /** A track begins. @returns whether the open lap has one already */
  track(): boolean {
    return this.#open !== null && this.#open.tracks++ > 0;
  }

  /** An element of the open lap beside its tracks. The first value of a total counts. */
  value(name: string, text: string, parent: string): void {
    const total = totalOf.get(name === 'value' ? parent : name);
    if (this.#open !== null && total !== undefined && text !== '') this.#open.totals[total] ??= decimal(text);
  }

  /** @param to time of the last trackpoint */
  end(to: number): void {
    if (this.#open !== null)
      this.#whole.push({ from: this.#open.from, to, totals: stated(this.#open.totals) });
    this.#open = null;
  }

  /** The laps that go on for some time, each with the mean power that it states, W. */
  laps(): Lap[] {
    return this.#whole.flatMap(({ from, to, totals: { meanPower } }): Lap[] => {
      if (!(to > from)) return [];
      return [meanPower === undefined ? { from, to } : { from, to, meanPower }];
    });
  }

  /** What all laps state together. */
  totals(): Totals {
    return combineTotals(this.#whole.map(({ totals }) => totals));
  }
}
