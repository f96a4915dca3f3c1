import type { Channel, Recording } from '../../src/types.ts';
import { type MeterSpec, read } from './meter.ts';
import type { Random } from './random.ts';
import { plainRecorder, type RecorderSpec, record } from './recorder.ts';
import { type RideKind, ride } from './ride.ts';
import { onTheDay, type Rider } from './rider.ts';
import { drawDemand } from './rides/index.ts';

export interface HistoryPlan {
  readonly rides: number;
  /** Days between the first ride and the race. */
  readonly days: number;
  /** CP of the first ride over CP of the race day's form; 0.95: has become 5 % stronger. */
  readonly firstForm: number;
  /** Share of rides with an effort near the rider's best. */
  readonly hard: number;
  /** Every fourth ride is a bunch race, with the sprints that belong to it. */
  readonly sprints?: boolean;
  /** Minutes of each ride, or as the kind of ride has it. */
  readonly minutes?: number;
  /** All that is kept of what the race's recorder writes, where not everything is wanted. */
  readonly channels?: readonly Channel[];
}

const hardKinds: readonly RideKind[] = [
  'short race',
  'time trial',
  'bunch race',
  'group ride and finale',
  'long climb',
];
const easyKinds: readonly RideKind[] = ['set-point session', 'outdoor ride', 'outdoor ride', 'long ride'];

/**
 * The rider's folder of past recordings, oldest first: mostly training, now and then a ride that shows
 * what they can do. Made at 1 s steps: nobody compares two meters in it.
 *
 * @param race clock time (s) of the race; every ride ends at least a day before
 */
export function drawHistory(
  rider: Rider,
  meter: MeterSpec,
  recorder: RecorderSpec,
  plan: HistoryPlan,
  race: number,
  random: Random,
): Recording[] {
  const channels = recorder.channels.filter((channel) => plan.channels?.includes(channel) ?? true);
  const out: Recording[] = [];
  for (let k = 0; k < plan.rides; k++) {
    const own = random.fork(k);
    const through = (k + own.uniform()) / plan.rides;
    const day = Math.floor(plan.days * (1 - through)) + 2;
    const form = plan.firstForm + (1 - plan.firstForm) * through;
    const today = onTheDay(rider, own.fork('form'), form);
    const drawn = own.pick(own.chance(plan.hard) ? hardKinds : easyKinds);
    const kind = plan.sprints === true && k % 4 === 1 ? 'bunch race' : drawn;
    const minutes = plan.minutes ?? (kind === 'short race' ? 12 : undefined);
    const demand = drawDemand(kind, today, own.fork('demand'), own.fork('race'), minutes);
    const truth = ride(today, demand, own.fork('ride'), { step: 1 });
    const start = Math.floor(race / 86400) * 86400 - day * 86400 + own.integer(7 * 3600, 19 * 3600);
    const spec: RecorderSpec = {
      ...plainRecorder,
      device: recorder.device,
      channels,
      name: `${String(k + 1).padStart(3, '0')}.fit`,
    };
    out.push(record(truth, read(truth, meter, own.fork('meter')), spec, start, own.fork('record')));
  }
  return out;
}
