import { declaredPair } from '../declared.ts';
import type { AlignedSecond, NotApplicable, Subjects } from '../types.ts';
import { defineMeasure, notApplicable, number, type Reading } from './measure.ts';
import { blocksOf } from './pair/blocks.ts';
import { dependence, dependenceOptions } from './pair/dependence.ts';
import { gate } from './pair/gate.ts';
import { pairSamples } from './pair/samples.ts';

/**
 * How much the difference between two meters changes from slow to fast cadence, in percent, at equal power
 * and time; where one may be a trainer and speed was recorded, also from slow to fast speed, which is that of
 * its flywheel. Of the two the one is told that lies farther from what honest meters show.
 *
 * Honest slopes and noise bound what can be found: where a limit lets 0.05 % of 12,229 simulated honest submissions
 * with meters as found be asked, this finds at most 85 % of errors of 8 % over the range of cadence, and 95 % over that of
 * speed.
 */
export const cadenceDependence = defineMeasure({
  id: 'cadence-dependence',
  of: 'pair',
  unit: '%',
  options: {
    ...dependenceOptions,
    leastCadenceRange: number('least range of cadence, rpm'),
    leastSpeedRange: number('least range of speed, km/h'),
    cadenceSpread: number('honest change from rounding, place and wander, one standard deviation, %'),
    spreadPerRpm: number('honest change a rpm of range between two meters, one standard deviation, %'),
    speedSpread: number('honest change over the range of speed, one standard deviation, %'),
    fieldFactor: number('how many times as far two meters as found in the field change'),
  },
  compute(all, pair, options) {
    const closed = gate(pair);
    if (closed !== null) return closed;
    const blocks = blocksOf(pairSamples(all, pair), options.blockSeconds);
    const along = (
      effect: 'cadence' | 'speed',
      leastRange: number,
      spread: (range: number) => number,
    ): Reading | NotApplicable => {
      const column = effect === 'cadence' ? blocks.cadenceOfWork : blocks.speedOfWork;
      if (column.some(Number.isNaN)) return notApplicable('no-channel', { channel: effect });
      const distance = (from: number, to: number) => to - from;
      const honest = (from: number, to: number) => ({
        declared: spread(distance(from, to)),
        field: options.fieldFactor * spread(distance(from, to)),
      });
      const unit = effect === 'cadence' ? 'rpm' : 'km/h';
      return dependence(
        pair.subject,
        blocks,
        { effect, unit, column, distance, leastRange, honest },
        options,
      );
    };
    const byCadence = along('cadence', options.leastCadenceRange, (range) =>
      Math.hypot(options.cadenceSpread, options.spreadPerRpm * range),
    );
    if (!mayTurnFlywheel(all, pair)) return byCadence;
    const bySpeed = along('speed', options.leastSpeedRange, () => options.speedSpread);
    return bySpeed.state === 'measured' && farOut(bySpeed) > farOut(byCadence) ? bySpeed : byCadence;
  },
});

/** Indoors, as far as is known, and on a trainer: then speed is that of a flywheel. */
function mayTurnFlywheel(all: Subjects, { subject }: AlignedSecond): boolean {
  const { own, other } = declaredPair(all, subject);
  const mayBe = [own, other].some((device) => device === null || device.place === 'trainer');
  return mayBe && all.primary.recording.indoors !== false;
}

/** Distance from the middle of the honest range, in its spreads; what could not be measured is nearer than anything. */
function farOut(outcome: Reading | NotApplicable): number {
  if (outcome.state !== 'measured') return -1;
  return Math.abs(outcome.value) / outcome.expected!.declared.spread;
}
