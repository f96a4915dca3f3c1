import type { CurveChart } from '../../types.ts';
import { duration, number, quantity } from '../words/number.ts';
import { axisBottom, axisLeft, box, dot, gutter, heading, panel, path, shape, sheet } from './frame.ts';
import type { Picture, Setting } from './picture.ts';
import { extent, polyline } from './reduce.ts';
import { logarithmic } from './scale.ts';

const height = 260;
/** The durations that riders speak of, s. */
const ticks = [1, 5, 15, 30, 60, 300, 1200, 3600, 7200, 14_400];

type Point = CurveChart['points'][number];
type Key = 'race' | 'best' | 'allowed';

/** The race's power–duration curve against the best of the history and what that allows. */
export function curve(chart: CurveChart, setting: Setting): Picture {
  const { points } = chart;
  const beyond = points.filter(({ race, allowed }) => race !== null && allowed !== null && race > allowed);
  const description = `Best mean power over each duration, on a logarithmic scale of time: the race, the best of the earlier rides, and the upper end of what they allow where the two are compared, drawn straight in between. ${
    beyond.length === 0
      ? 'The race stays within it everywhere.'
      : `The race lies above it at ${beyond.map((point) => duration(point.duration)).join(', ')}.`
  }`;
  const watts = (value: number | null) => (value === null ? '–' : quantity(value, 'W'));
  return {
    title: 'Power–duration curve against the earlier rides',
    description,
    table: {
      head: ['duration', 'race', 'best of the earlier rides', 'they allow up to'],
      rows: points.map((point) => [
        duration(point.duration),
        watts(point.race),
        watts(point.best),
        watts(point.allowed),
      ]),
    },
    strip: {
      label: 'race over what the history allows',
      values: points.flatMap(({ race, allowed }) =>
        race === null || allowed === null || allowed <= 0 ? [] : [(race / allowed) * 100],
      ),
      say: (value) => quantity(Math.round(value), '%'),
    },
    draw: (width) => {
      const durations = points.map((point) => point.duration).filter((one) => one > 0);
      const domain: [number, number] = [Math.min(...durations, 3600), Math.max(...durations, 1)];
      const shown = extent(
        ...(['race', 'best', 'allowed'] as const).map((key) => points.map((point) => point[key])),
      );
      const on = {
        ...panel(
          [gutter.left, width - gutter.right],
          [gutter.title + 6, height - gutter.axis],
          [0, 1],
          [0, shown?.[1] ?? 1],
        ),
        x: logarithmic(domain, [gutter.left, width - gutter.right]),
      };
      const along = (key: Key) =>
        runs(points, key).map((run) =>
          run.map((point) => [on.x(point.duration), on.y(point[key]!)] as const),
        );
      const shaded = allowance(points);
      const wide = shaded.filter((run) => run.length > 1);
      const alone = shaded.filter((run) => run.length === 1);
      const range = wide.map((run) =>
        polyline([
          ...run.filter(isCompared).map((point) => [on.x(point.duration), on.y(point.allowed)] as const),
          ...[...run].reverse().map((point) => [on.x(point.duration), on.y(point.best!)] as const),
        ]),
      );
      return sheet(setting.id, [width, height], 'Power–duration curve', description, [
        range.map((d) => shape(`${d}Z`, 'band')).filter((one) => one !== null),
        alone.map(([point]) => {
          const x = on.x(point!.duration);
          return box([x - 3, x + 3], [on.y(point!.allowed!), on.y(point!.best!)], 'band');
        }),
        axisLeft(on, number),
        path(along('best').map(polyline).join(''), 'b', 1.75, '5 3'),
        path(along('race').map(polyline).join(''), 'a', 2),
        beyond.map((point) => dot([on.x(point.duration), on.y(point.race!)], 4, 'a')),
        axisBottom(
          on,
          ticks.filter((tick) => tick >= domain[0] && tick <= domain[1]),
          duration,
        ),
        heading(on, 'W', [
          { name: 'race', role: 'a' },
          { name: 'best before', role: 'b', mark: 'dashes' },
          { name: 'allowed beyond it', role: 'band', mark: 'area' },
        ]),
      ]);
    },
  };
}

type Compared = Point & { readonly allowed: number };

function isCompared(point: Point): point is Compared {
  return point.allowed !== null;
}

/**
 * Where the history's best is known, from the first duration that is compared to the last: the measure compares at
 * some durations only, and what the history allows is drawn straight from one to the next.
 */
function allowance(points: readonly Point[]): readonly (readonly Point[])[] {
  return runs(points, 'best').flatMap((run) => {
    const compared = [...run.keys()].filter((k) => isCompared(run[k]!));
    return compared.length === 0 ? [] : [run.slice(compared[0], compared.at(-1)! + 1)];
  });
}

/** Unbroken runs of points at which the value is known. */
function runs(points: readonly Point[], key: Key): readonly (readonly Point[])[] {
  const found: Point[][] = [[]];
  for (const point of points) {
    if (point[key] !== null && point.duration > 0) found.at(-1)!.push(point);
    else if (found.at(-1)!.length > 0) found.push([]);
  }
  return found.filter((run) => run.length > 0);
}
