import type { SpeedCurveChart } from '../../types.ts';
import { kmh } from '../../units.ts';
import { number, quantity } from '../words/number.ts';
import { axisBottom, axisLeft, dots, gutter, heading, panel, path, roundTicks, sheet } from './frame.ts';
import type { Picture, Setting } from './picture.ts';
import { extent, polyline } from './reduce.ts';

const height = 240;

/** Power against speed, with the curve that it keeps to. */
export function speedCurve(chart: SpeedCurveChart, setting: Setting): Picture {
  const { points, curve, inertia } = chart;
  const description = `Power against speed for ${points.length} seconds of the ride, with the curve that power keeps to${
    inertia === null ? '' : `, less what it takes to change the speed of ${quantity(inertia, 'kg')}`
  }. Measured power scatters widely around any such curve.`;
  return {
    title: 'Power against speed',
    description,
    table: {
      head: ['speed', 'power on the curve'],
      rows: curve.map(({ speed, watts }) => [
        `${number(Math.round(speed * kmh * 10) / 10)} km/h`,
        quantity(watts, 'W'),
      ]),
    },
    strip: null,
    draw: (width) => {
      const all = [...points, ...curve];
      const [slowest, fastest] = extent(all.map((point) => point.speed * kmh)) ?? [0, 1];
      const speeds = [Math.min(0, slowest), fastest] as const;
      const watts = extent(all.map((point) => point.watts)) ?? [0, 1];
      const on = panel(
        [gutter.left, width - gutter.right],
        [gutter.title + 6, height - gutter.axis],
        speeds,
        [Math.min(0, watts[0]), watts[1]],
      );
      return sheet(setting.id, [width, height], 'Power against speed', description, [
        axisLeft(on, number),
        dots(
          points.map((point) => [on.x(point.speed * kmh), on.y(point.watts)] as const),
          1.6,
          'a',
        ),
        path(polyline(curve.map((point) => [on.x(point.speed * kmh), on.y(point.watts)] as const)), 'b', 2),
        axisBottom(on, roundTicks(speeds, width), (tick) => `${number(tick)} km/h`),
        heading(on, 'W', [
          { name: 'one second', role: 'a', mark: 'dot' },
          { name: 'curve', role: 'b' },
        ]),
      ]);
    },
  };
}
