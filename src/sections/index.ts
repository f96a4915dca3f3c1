import { stretchesWhere } from '../math/stretches.ts';
import type { AlignedSet, Section, SectionKind, Stretch } from '../types.ts';
import { climbs } from './climbs.ts';
import { heldLevels } from './held.ts';
import { levelStretches } from './levels.ts';
import { overUnders } from './over-unders.ts';
import { settings } from './settings.ts';
import { sprints } from './sprints.ts';

/**
 * Finds the stretches of the race that are worth comparing on their own, in order of kind and time. Power
 * is the mean of all meters on one clock: finding sprints by one of them would pick its errors.
 */
export function findSections(set: AlignedSet, window: Stretch): Section[] {
  const power = meanPower(set);
  const of = (kind: SectionKind, stretches: readonly Stretch[]): Section[] =>
    stretches.map((stretch) => ({ kind, stretch }));
  const [from, to] = window;
  const third = Math.floor((to - from) / 3);
  const thirds = [...of('first third', [[from, from + third]]), ...of('last third', [[to - third, to]])];
  if (power === null) return thirds;
  const steady = levelStretches(power, window, {
    grain: settings.steadyGrain,
    share: settings.steadyShare,
    shortest: settings.steadyShortest,
  });
  const held = heldLevels(power, window);
  const setPoints = held.filter(
    ({ stretch: [begin, end], spread }) =>
      end - begin >= settings.setPointShortest && spread <= settings.setPointSpread,
  );
  const still = stretchesWhere(from, to, (t) => power[t] === 0, settings.coastingShortest);
  return [
    ...thirds,
    ...of(
      'steady',
      steady.map(({ stretch }) => stretch),
    ),
    ...of(
      'set-point block',
      setPoints.map(({ stretch }) => stretch),
    ),
    ...of('over-under', overUnders(held)),
    ...of('climb', climbs(set.primary, window)),
    ...of('sprint', sprints(power, window)),
    ...of('coasting', still),
  ];
}

/** Mean of the meters on one clock, W; NaN where one of them has a gap. Null without power. */
function meanPower({ primary, seconds }: AlignedSet): Float64Array | null {
  const own = primary.channels.power;
  if (own === undefined) return null;
  const others = seconds
    .filter(({ alignment }) => alignment.secure)
    .flatMap(({ series }) => series.channels.power ?? []);
  if (others.length === 0) return own;
  const mean = own.slice();
  for (const other of others) for (let t = 0; t < mean.length; t++) mean[t]! += other[t]!;
  for (let t = 0; t < mean.length; t++) mean[t]! /= others.length + 1;
  return mean;
}
