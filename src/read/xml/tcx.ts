import { parseClock } from '../clock.ts';
import type { Parsed } from '../format.ts';
import { indoorsOf, sportOf } from '../sport.ts';
import { decodeText, shortName } from '../text.ts';
import { Laps } from './laps.ts';
import { readMarkup } from './markup.ts';
import { Trackpoints } from './trackpoints.ts';

/**
 * Reads a TCX activity. Values count only inside a Trackpoint: laps carry averages under the same names. The
 * laps' own totals become the file's totals. Times without a zone are read as UTC. A second Track in one lap
 * means that recording was interrupted: the time between them is a pause.
 *
 * @throws Problem `format-limits` when it is nested too deep.
 */
export function readTcx(bytes: Uint8Array): Parsed {
  const points = new Trackpoints();
  const laps = new Laps();
  const creator: Record<string, string | null> = {};
  let sport: string | null = null;
  let activities = 0;
  let inActivity = false;

  const fault = readMarkup(decodeText(bytes), {
    started: () => points.count > 0,
    open(name, attributes) {
      if (name === 'activity') {
        activities++;
        inActivity = true;
        sport ??= shortName(attributes.Sport);
      } else if (!inActivity) {
        // A planned course has trackpoints, too, but nobody rode them.
        return;
      } else if (name === 'lap') {
        laps.end(points.lastTime);
        laps.begin(parseClock(attributes.StartTime ?? '')?.seconds ?? Number.NaN);
      } else if (name === 'track') {
        if (laps.track()) points.interrupt();
      } else if (name === 'trackpoint') points.begin(false);
    },
    close(name, text, parent) {
      if (name === 'trackpoint' && points.open) points.end();
      else if (points.open) points.value(name, text, parent);
      else if (name === 'lap') laps.end(points.lastTime);
      else if (laps.open) laps.value(name, text, parent);
      else if (name === 'activity') inActivity = false;
      else if (parent === 'creator') creator[name] = shortName(text);
    },
  });
  laps.end(points.lastTime);

  const { defects, ...columns } = points.assemble();
  return {
    ...columns,
    sport: sportOf(sport),
    indoors: indoorsOf(sport, points.hasPositions),
    device: { maker: null, product: creator.name ?? null, serial: creator.unitid ?? null },
    balanceSide: null,
    pauses: points.pauses,
    laps: laps.laps(),
    totals: laps.totals(),
    defects: [
      ...(fault === null ? [] : [{ id: 'markup-ends-early', values: { line: fault } } as const]),
      ...(activities > 1 ? [{ id: 'several-sessions', values: { sessions: activities } } as const] : []),
      ...defects,
    ],
  };
}
