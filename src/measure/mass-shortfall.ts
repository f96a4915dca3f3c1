import { median } from 'simple-statistics';
import { claimedSpread, declaredFor, declaredPair } from '../declared.ts';
import { type Climb, climbing, stretchSeconds } from '../math/climbs.ts';
import { normalReach } from '../math/normal.ts';
import { chainEfficiency } from '../math/road-power.ts';
import { robustSpread } from '../math/robust-spread.ts';
import type { AlignedSecond, DeviceFacts, HonestRange, Series, Subjects } from '../types.ts';
import { day } from '../units.ts';
import { defineMeasure, measured, notApplicable, number } from './measure.ts';
import { behindChain, chainLoss, oneSidedSpread } from './pair/expected.ts';
import { isIndependent } from './pair/gate.ts';
import { pairSamples } from './pair/samples.ts';
import { subjectOf } from './recording/subject.ts';
import { kinshipOf } from './rider/meters.ts';

/**
 * By how much the speed on steep, steady climbs makes the rider lighter than declared, in percent: the road
 * power model (Martin et al. 1998) solved for mass, stretch by stretch, and the middle one taken. Where the
 * stretches contradict one another, speed does not follow from power and nothing is said.
 *
 * A meter that reads low looks like a lighter rider, and nothing in one ride tells the two apart. What does is
 * a second meter of the same ride, and what earlier rides showed with the same meter; both move the honest
 * range and narrow it. A second that reads far lower than meters do is off itself: heard, it would make a
 * light rider of anyone. A mass that was always understated hides behind its own past: the value is judged
 * without the earlier rides as well, and the range that leaves it further out is stated.
 */
export const massShortfall = defineMeasure({
  id: 'mass-shortfall',
  of: 'recording',
  unit: '%',
  options: {
    leastStretches: number('fewest stretches'),
    bicycleKg: number('mass of bicycle and clothing, kg'),
    mostScatter: number(
      'scatter of the stretches (median deviation, share) above which speed is not tied to power',
    ),
    fieldSpread: number('SD of meters as found in the field, %'),
    fieldOffset: number('by how much they read low on average, %'),
    otherSpread: number('SD that grade, air and bicycle add, %'),
    mostApart: number('spreads of a pair of meters below which a second one is off itself and not heard'),
    repeatSpread: number('SD of one meter from ride to ride, %'),
    riderSpread: number('SD of a rider’s own mass over the time that past rides are looked at, %'),
    oldest: number('age beyond which a past ride says nothing of that, days'),
  },
  compute(all, series, options) {
    for (const channel of ['power', 'speed', 'altitude'] as const) {
      if (series.channels[channel] === undefined) return notApplicable('no-channel', { channel });
    }
    const { massKg, devices } = all.rider;
    if (massKg === undefined) return notApplicable('no-fact', { fact: 'massKg' });
    const device = declaredFor(devices, series.recording.name, 'primary');
    const { climbs, mass, scatter } = climbing(series, all.window, arriving(device));
    const [blocks, needed] = [climbs.length, options.leastStretches];
    if (blocks < needed) return notApplicable('too-few-blocks', { blocks, needed });
    const off = climbs.map((climb) => climb.mass - mass);
    if (!(mass > options.bicycleKg) || scatter > options.mostScatter) return notApplicable('speed-not-tied');
    const percent = (kg: number) => 100 * (1 - (kg - options.bicycleKg) / massKg);
    // Standard error of a median of normal values: √(π/2) σ/√n.
    const error = Math.sqrt(Math.PI / 2 / blocks) * robustSpread(off);
    const reach = normalReach * error;
    // One percent of power is this much of the rider's mass, for the bicycle counts as well.
    const lever = mass / massKg;
    const seconds = all.seconds.filter(isIndependent).flatMap((pair) => {
      const told = secondOpinion(all, pair, climbs, options);
      return told === null ? [] : [told];
    });
    // Profiles keep mass as if nothing were lost in the chain.
    const bare = climbing(series, all.window, 1).mass;
    const past = pastOpinion(all, series, options, (kg) => percent((kg * mass) / bare));
    const own = claimedSpread(device, options.fieldSpread);
    const sides = device?.sides === 1 ? oneSidedSpread : 0;
    const common = [options.otherSpread, (100 * error) / massKg];
    const field = [options.fieldOffset, Math.hypot(options.fieldSpread, sides)] as const;
    const range = ([offset, spread]: readonly [number, number], told: readonly Opinion[]) =>
      honestRange({ low: offset * lever, spread: spread * lever }, told, common);
    const opinions = seconds.map(({ low, spread }) => ({ low: low * lever, spread: spread * lever }));
    const ranges = [opinions, ...(past === null ? [] : [[...opinions, past]])].map((told) => ({
      told,
      field: range(field, told),
      declared: range([0, Math.hypot(own, sides)], told),
    }));
    const value = percent(mass);
    const out = ({ field: { centre, spread } }: (typeof ranges)[number]) => (value - centre) / spread;
    const stated = ranges.reduce((a, b) => (out(b) > out(a) ? b : a));
    return measured(value, [percent(mass + reach), percent(mass - reach)], blocks, {
      expected: { declared: stated.declared, field: stated.field },
      circumstances: series.recording.indoors === true ? [] : ['outdoors'],
      details: {
        implied: { value: mass - options.bicycleKg, unit: 'kg' },
        declared: { value: massKg, unit: 'kg' },
        bicycle: { value: options.bicycleKg, unit: 'kg' },
        stretches: blocks,
        meters: 1 + seconds.length,
        rides: past !== null && stated.told.includes(past) ? past.rides : 0,
      },
      charts: [
        {
          kind: 'climbs',
          id: `climbs:${subjectOf(all, series)}`,
          declared: massKg,
          implied: {
            kg: mass - options.bicycleKg,
            low: mass - reach - options.bicycleKg,
            high: mass + reach - options.bicycleKg,
          },
          climbs: climbs.map((climb) => ({
            at: climb.at,
            watts: climb.watts,
            kg: climb.mass - options.bicycleKg,
          })),
        },
      ],
    });
  },
  circumstances: { outdoors: 'wind, draft and barometer blur what speed says of mass' },
});

/** By how much the primary's meter makes the rider look lighter (%), by one piece of evidence, and its SD. */
interface Opinion {
  readonly low: number;
  readonly spread: number;
}

/** Normal beliefs multiplied; what is common to all evidence comes on top. */
function honestRange(prior: Opinion, told: readonly Opinion[], common: readonly number[]): HonestRange {
  const all = [prior, ...told];
  const precision = all.reduce((sum, { spread }) => sum + spread ** -2, 0);
  const centre = all.reduce((sum, { low, spread }) => sum + low * spread ** -2, 0) / precision;
  return { centre, spread: Math.hypot(precision ** -0.5, ...common) };
}

/** Share of a meter's power that arrives at the wheel. */
const arriving = (device: DeviceFacts | null) => (behindChain(device) === true ? 1 : chainEfficiency);

interface SecondOptions {
  readonly leastStretches: number;
  readonly mostApart: number;
  readonly fieldSpread: number;
  readonly fieldOffset: number;
}

/** What a second meter, which reads low like others, says of the primary's on the same climbs: in percent of power. */
function secondOpinion(
  all: Subjects,
  pair: AlignedSecond,
  climbs: readonly Climb[],
  { leastStretches, mostApart, fieldSpread, fieldOffset }: SecondOptions,
): Opinion | null {
  const climbed = new Uint8Array(all.primary.length);
  for (const { at } of climbs) climbed.fill(1, at, at + stretchSeconds);
  const samples = pairSamples(all, pair);
  let [first, second, seconds] = [0, 0, 0];
  samples.at.forEach((at, i) => {
    if (climbed[at] === 0) return;
    first += samples.own[i]!;
    second += samples.other[i]!;
    seconds++;
  });
  if (seconds < leastStretches * stretchSeconds || !(first > 0 && second > 0)) return null;
  const { own, other } = declaredPair(all, pair.subject);
  const known = behindChain(own) !== null && behindChain(other) !== null;
  const place = known && behindChain(own) === behindChain(other) ? 0 : chainLoss.spread;
  const sides = other?.sides === 1 ? oneSidedSpread : 0;
  const low = 100 * Math.log((second * arriving(other)) / (first * arriving(own)));
  const spread = Math.hypot(fieldSpread, place, sides);
  if (low < -mostApart * Math.hypot(spread, fieldSpread)) return null;
  return { low: low + fieldOffset, spread };
}

interface PastOptions {
  readonly leastStretches: number;
  readonly mostScatter: number;
  readonly repeatSpread: number;
  readonly riderSpread: number;
  readonly oldest: number;
}

/**
 * What earlier rides with the same meter, ridden where the race was, showed of the same rider: in percent of
 * the mass declared today. They may have weighed something else then.
 */
function pastOpinion(
  { history }: Subjects,
  series: Series,
  options: PastOptions,
  percent: (kg: number) => number,
): (Opinion & { readonly rides: number }) | null {
  const told = (history?.rides ?? []).flatMap((ride) => {
    const { climbed } = ride;
    const useful =
      climbed !== undefined &&
      climbed.stretches >= options.leastStretches &&
      climbed.scatter <= options.mostScatter &&
      ride.indoors === series.recording.indoors &&
      series.start - ride.to <= options.oldest * day &&
      kinshipOf(ride, series) === 'own';
    return useful ? [climbed.kg] : [];
  });
  if (told.length === 0) return null;
  const spread = Math.hypot(options.riderSpread, options.repeatSpread * Math.sqrt(1 + 1 / told.length));
  return { low: percent(median(told)), spread, rides: told.length };
}
