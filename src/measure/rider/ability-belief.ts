import { type AbilityModel, abilityFrom } from '../../math/ability.ts';
import { type Belief, blurred, evenBelief, normaliseWeights, raised } from '../../math/belief.ts';
import type { Kinship } from './meters.ts';
import type { WindowGroup } from './past-windows.ts';

/** What separates one measurement of ability from another; all but the last as shares (natural logarithm). */
export interface Scatter {
  /** SD between meters as found in the field. */
  readonly betweenMeters: number;
  /** SD between riding indoors and outdoors. */
  readonly betweenSettings: number;
  /** SD of the rider's own power–duration curve around the typical one, where it was used. */
  readonly betweenDurations: number;
  /** Mean by which the highest past window may fall short of ability, before the others are looked at. */
  readonly shortfall: number;
  /** Mean by which all past windows may have been held back without a sign of it; 0 where heart rate would tell. */
  readonly heldBackUnseen: number;
  /** Share of races in which meter or calibration had changed under the same name. */
  readonly swapped: number;
  /** Share of races with another meter where only the recorder, or the model, is the same. */
  readonly unlisted: number;
}

/** How far above and below the highest window ability is looked for, and how finely: in spreads, and a share. */
const above = { spreads: 15, share: 0.1 };
const below = { spreads: 4, share: 0.1 };
const stepsToASpread = 3;

/**
 * Belief about ln(ability) on the race day as the race's own meter would read it where the race was ridden.
 * What another meter measured is off by that meter's error and by the race meter's own; what was ridden in
 * the other setting, by what that may change.
 *
 * @param top highest window in which the rider may have gone all out
 */
export function abilityBelief(
  groups: readonly WindowGroup[],
  top: number,
  model: AbilityModel,
  scatter: Scatter,
): Belief {
  const { spread } = model;
  const reach = (side: typeof above) => side.spreads * spread + side.share;
  const grid = evenBelief(top - reach(below), top + reach(above), spread / stepsToASpread);
  const prior = fallingAbove(grid, top, scatter.shortfall);
  const same = (kinship: Kinship) =>
    groups.find(({ meter, setting }) => meter === kinship && setting === 'same');
  const own = same('own') ?? same('likely own');
  const others = groups.filter((group) => group !== own);
  const classes = [true, false].flatMap((ownMeter) =>
    [true, false].map((inside) =>
      others.filter((g) => (g.meter === 'own') === ownMeter && (g.setting === 'same') === inside),
    ),
  );
  const told = classes
    .filter((group) => group.length > 0)
    .map((group) => asRaced(group, model, own === undefined ? prior : grid, scatter));
  const beliefs = own === undefined ? told : [abilityFrom(own.windows, model, prior), ...told];
  const settled = blurred(combined(beliefs), scatter.betweenDurations);
  const open = scatter.heldBackUnseen > 0 ? raised(settled, scatter.heldBackUnseen) : settled;
  const swapped = blurred(open, scatter.betweenMeters * Math.SQRT2);
  return own === undefined
    ? open
    : mixed(open, swapped, own.meter === 'own' ? scatter.swapped : scatter.unlisted);
}

/**
 * What groups that differ from the race in the same respects say of it: each is off by its own meter, all
 * of them together by the race's meter and by the setting.
 */
function asRaced(
  groups: readonly WindowGroup[],
  model: AbilityModel,
  start: Belief,
  scatter: Scatter,
): Belief {
  const { meter, setting } = groups[0]!;
  const apart = meter === 'own' ? 0 : scatter.betweenMeters;
  const each = groups.map(({ windows }) => blurred(abilityFrom(windows, model, start), apart));
  return blurred(combined(each), Math.hypot(apart, setting === 'same' ? 0 : scatter.betweenSettings));
}

/** Even up to `top`, falling off exponentially above it. */
function fallingAbove(grid: Belief, top: number, mean: number): Belief {
  const weights = grid.weights.map((_, i) => Math.exp(-Math.max(0, grid.first + i * grid.step - top) / mean));
  normaliseWeights(weights);
  return { ...grid, weights };
}

/** Independent beliefs about one number, multiplied. */
function combined(beliefs: readonly Belief[]): Belief {
  const [first, ...rest] = beliefs;
  const weights = first!.weights.slice();
  for (const belief of rest) for (let i = 0; i < weights.length; i++) weights[i]! *= belief.weights[i]!;
  normaliseWeights(weights);
  return { ...first!, weights };
}

function mixed(usual: Belief, rare: Belief, share: number): Belief {
  return {
    ...usual,
    weights: usual.weights.map((weight, i) => (1 - share) * weight + share * rare.weights[i]!),
  };
}
