import { median } from 'simple-statistics';
import { declaredFor } from '../declared.ts';
import { normalReach } from '../math/normal.ts';
import { airDensity, chainEfficiency, movedMass } from '../math/road-power.ts';
import { robustSpread } from '../math/robust-spread.ts';
import { SecondState, type Series, type Stretch } from '../types.ts';
import { defineMeasure, measured, notApplicable, number } from './measure.ts';
import { subjectOf } from './recording/subject.ts';

/** Sea level, Pa, and air of middling humidity: on a steep climb air hardly counts. */
const pressure = 101_325;
const humidity = 0.5;

/**
 * By how much the speed on steep, steady climbs makes the rider lighter than declared, in percent: the road
 * power model (Martin et al. 1998) solved for mass, stretch by stretch, and the middle one taken. Where the
 * stretches contradict one another, speed does not follow from power and nothing is said.
 */
export const massShortfall = defineMeasure({
  id: 'mass-shortfall',
  of: 'recording',
  unit: '%',
  options: {
    stretchSeconds: number('length of a stretch, s'),
    leastStretches: number('fewest stretches'),
    steepGrade: number('grade from which gravity outweighs the rest, rise over run'),
    leastSpeed: number('speed below which grade is not known well, m/s'),
    bicycleKg: number('mass of bicycle and clothing, kg'),
    dragArea: number('drag area, m²'),
    rolling: number('coefficient of rolling resistance'),
    usualCelsius: number('temperature where none was recorded, °C'),
    mostScatter: number(
      'scatter of the stretches (median deviation, share) above which speed is not tied to power',
    ),
    fieldSpread: number('SD of meters as found in the field, %'),
    otherSpread: number('SD that grade, air and bicycle add, %'),
  },
  compute(all, series, options) {
    for (const channel of ['power', 'speed', 'altitude'] as const) {
      if (series.channels[channel] === undefined) return notApplicable('no-channel', { channel });
    }
    const { massKg, devices } = all.rider;
    if (massKg === undefined) return notApplicable('no-fact', { fact: 'massKg' });
    const device = declaredFor(devices, series.recording.name, 'primary');
    const wheel = device !== null && (device.place === 'trainer' || device.place === 'hub');
    const climbs = steepStretches(series, all.window, wheel ? 1 : chainEfficiency, options);
    const masses = climbs.map(({ mass }) => mass);
    const [blocks, needed] = [masses.length, options.leastStretches];
    if (blocks < needed) return notApplicable('too-few-blocks', { blocks, needed });
    const middle = median(masses);
    const scatter = median(masses.map((mass) => Math.abs(mass - middle)));
    if (!(middle > options.bicycleKg) || scatter > options.mostScatter * middle)
      return notApplicable('speed-not-tied');
    const percent = (kg: number) => 100 * (1 - (kg - options.bicycleKg) / massKg);
    // Standard error of a median of normal values: √(π/2) σ/√n.
    const error = Math.sqrt(Math.PI / 2 / blocks) * robustSpread(masses.map((mass) => mass - middle));
    const reach = normalReach * error;
    const meter = device === null ? options.fieldSpread : device.tolerancePercent / Math.sqrt(3);
    const lever = middle / massKg;
    const spread = (own: number) => ({
      centre: 0,
      spread: Math.hypot(own * lever, options.otherSpread, (100 * error) / massKg),
    });
    return measured(percent(middle), [percent(middle + reach), percent(middle - reach)], blocks, {
      expected: { declared: spread(meter), field: spread(options.fieldSpread) },
      circumstances: series.recording.indoors === true ? [] : ['outdoors'],
      details: {
        implied: { value: middle - options.bicycleKg, unit: 'kg' },
        declared: { value: massKg, unit: 'kg' },
        bicycle: { value: options.bicycleKg, unit: 'kg' },
        stretches: blocks,
      },
      charts: [
        {
          kind: 'climbs',
          id: `climbs:${subjectOf(all, series)}`,
          declared: massKg,
          implied: {
            kg: middle - options.bicycleKg,
            low: middle - reach - options.bicycleKg,
            high: middle + reach - options.bicycleKg,
          },
          climbs: climbs.map(({ at, watts, mass }) => ({ at, watts, kg: mass - options.bicycleKg })),
        },
      ],
    });
  },
  circumstances: { outdoors: 'wind, draft and barometer blur what speed says of mass' },
});

interface Options {
  readonly stretchSeconds: number;
  readonly steepGrade: number;
  readonly leastSpeed: number;
  readonly dragArea: number;
  readonly rolling: number;
  readonly usualCelsius: number;
}

/** First second, mean power (W) and implied mass of rider and bicycle (kg) of each steep, steady stretch. */
interface Steep {
  readonly at: number;
  readonly watts: number;
  readonly mass: number;
}

function steepStretches(
  { channels, state }: Series,
  [from, to]: Stretch,
  efficiency: number,
  options: Options,
): Steep[] {
  const { power, speed, altitude, temperature } = channels;
  const found: Steep[] = [];
  const length = options.stretchSeconds;
  for (let start = from; start + length < to; start += length) {
    let watts = 0;
    let metres = 0;
    let whole = true;
    for (let i = start; i < start + length; i++) {
      watts += power![i]!;
      metres += speed![i]!;
      whole &&= state[i] === SecondState.recorded && power![i]! > 0 && speed![i]! >= options.leastSpeed;
    }
    const end = start + length;
    const grade = (altitude![end]! - altitude![start]!) / metres;
    if (!whole || !(grade >= options.steepGrade)) continue;
    const celsius = temperature?.[start] ?? options.usualCelsius;
    const density = airDensity(Number.isNaN(celsius) ? options.usualCelsius : celsius, pressure, humidity);
    const gained = (speed![end]! ** 2 - speed![start]! ** 2) / 2 / length;
    const mass = movedMass(
      { ...options, density },
      (watts / length) * efficiency,
      metres / length,
      grade,
      gained,
    );
    if (Number.isFinite(mass)) found.push({ at: start, watts: watts / length, mass });
  }
  return found;
}
