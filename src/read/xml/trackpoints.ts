import { Problem } from '../../problem.ts';
import { type Channel, channels, type Defect, type Stretch } from '../../types.ts';
import { parseClock } from '../clock.ts';
import { type Assembled, assemble } from '../columns.ts';
import { limits } from '../limits.ts';
import { decimal } from '../number.ts';

/**
 * Elements inside a trackpoint, by local name: those of the two schemas and those that recorders put into
 * extensions under prefixes of their own. Units are those of the schemas (m, m/s, °C, W).
 */
const channelOf: ReadonlyMap<string, Channel> = new Map([
  ['watts', 'power'],
  ['power', 'power'],
  ['powerinwatts', 'power'],
  ['cadence', 'cadence'],
  ['cad', 'cadence'],
  ['runcadence', 'cadence'],
  ['hr', 'heartRate'],
  ['heartrate', 'heartRate'],
  ['heartratebpm', 'heartRate'],
  ['speed', 'speed'],
  ['altitudemeters', 'altitude'],
  ['ele', 'altitude'],
  ['distancemeters', 'distance'],
  ['distance', 'distance'],
  ['atemp', 'temperature'],
  ['temp', 'temperature'],
  ['temperature', 'temperature'],
]);
const positions: ReadonlySet<string> = new Set(['latitudedegrees', 'longitudedegrees']);

/** Collects trackpoints, one after another. */
export class Trackpoints {
  readonly #times: number[] = [];
  readonly #columns: { readonly [C in Channel]: number[] };
  readonly #unreadable = new Map<string, number>();
  #open = false;
  #zoned = true;
  #positions = false;
  #lastTime = Number.NaN;
  /** Time of the last trackpoint before a break that none has followed yet; null: there is no such break. */
  #brokenAt: number | null = null;
  /** What lies between the last second before each break and the first after it. */
  readonly pauses: Stretch[] = [];

  constructor() {
    this.#columns = Object.fromEntries(channels.map((channel) => [channel, []])) as unknown as {
      [C in Channel]: number[];
    };
  }

  get count(): number {
    return this.#times.length;
  }

  /** Whether a trackpoint is open. */
  get open(): boolean {
    return this.#open;
  }

  get hasPositions(): boolean {
    return this.#positions;
  }

  /** Clock time of the last trackpoint that has one; NaN before. */
  get lastTime(): number {
    return this.#lastTime;
  }

  /** @throws Problem `format-limits` with too many. */
  begin(hasPosition: boolean): void {
    if (this.#times.length === limits.trackpoints) throw tooMany();
    this.#open = true;
    this.#positions ||= hasPosition;
    this.#times.push(Number.NaN);
    for (const channel of channels) this.#columns[channel].push(Number.NaN);
  }

  end(): void {
    this.#open = false;
    const from = (this.#brokenAt ?? Number.NaN) + 1;
    if (this.#lastTime > from) this.pauses.push([from, this.#lastTime]);
    this.#brokenAt = null;
  }

  /** Recording was interrupted here: unless nothing was recorded yet, the time until the next trackpoint is a pause. */
  interrupt(): void {
    this.#brokenAt = this.count > 0 ? this.#lastTime : null;
  }

  /** An element inside the open trackpoint. The first value of a channel counts. */
  value(name: string, text: string, parent: string): void {
    if (text === '') return;
    const last = this.#times.length - 1;
    if (name === 'time') {
      const time = parseClock(text);
      if (time !== null && Number.isNaN(this.#times[last]!)) {
        this.#times[last] = time.seconds;
        this.#lastTime = time.seconds;
        this.#zoned &&= time.zoned;
      }
    } else if (positions.has(name)) this.#positions = true;
    else {
      // HeartRateBpm holds its number in an element "Value".
      const channel = channelOf.get(name === 'value' ? parent : name);
      if (channel === undefined || !Number.isNaN(this.#columns[channel][last]!)) return;
      const number = decimal(text);
      this.#columns[channel][last] = number;
      if (Number.isNaN(number)) this.#unreadable.set(name, (this.#unreadable.get(name) ?? 0) + 1);
    }
  }

  /** A trackpoint that is still open, because the file breaks off inside it, is left out. */
  assemble(): Assembled {
    const whole = this.#times.length - (this.#open ? 1 : 0);
    const typed = (values: number[]) => Float64Array.from(values.slice(0, whole));
    const columns = channels.map((channel) => [channel, typed(this.#columns[channel])]);
    const assembled = assemble({
      time: typed(this.#times),
      channels: Object.fromEntries(columns),
      meters: [],
    });
    const defects: Defect[] = [...this.#unreadable].map(([column, count]) => ({
      id: 'unreadable-values',
      values: { count, column },
    }));
    if (!this.#zoned) defects.push({ id: 'zone-assumed', values: {} });
    return { ...assembled, defects: [...defects, ...assembled.defects] };
  }
}

function tooMany(): Problem {
  return new Problem({
    code: 'format-limits',
    what: `this file holds more than ${limits.trackpoints} trackpoints`,
    hint: 'Hand in the recording of this ride alone',
  });
}
