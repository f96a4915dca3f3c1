import type { Report } from '../../types.ts';
import { html, type Markup } from '../markup.ts';
import { quantity, span } from '../words/number.ts';
import { heldSaid, setPointsTitle, targetsSaid, trendSaid } from '../words/set-points.ts';
import { meterName } from '../words/subject.ts';
import { bullets, folded, part, table } from './said.ts';

/** More blocks than these stay in the JSON alone. */
const mostBlocks = 60;

/** What each meter holds where the ride keeps to levels, block by block, and how that goes with cadence and speed. */
export function setPoints(report: Report): Markup | null {
  const { setPoints: found } = report;
  if (found === null || found.blocks.length === 0) return null;
  const meters = [...new Set(found.blocks.flatMap((block) => block.meters.map(({ subject }) => subject)))];
  const shown = table(
    found.blocks.length > mostBlocks ? `The first ${mostBlocks} set-point blocks` : 'Set-point blocks',
    [
      'when',
      'target',
      'cadence',
      'speed',
      ...meters.flatMap((subject) => [
        `${meterName(report, subject)} over target`,
        `${meterName(report, subject)} rises in`,
      ]),
    ],
    found.blocks.slice(0, mostBlocks).map(({ stretch, target, cadence, speed, meters: held }) => [
      span(stretch),
      quantity(target, 'W'),
      cadence === null ? '–' : quantity(cadence, 'rpm'),
      speed === null ? '–' : quantity(speed, 'km/h'),
      ...meters.flatMap((subject) => {
        const one = held.find((meter) => meter.subject === subject);
        if (one === undefined) return ['–', ''];
        return [heldSaid(one), one.rise === null ? '' : quantity(one.rise, 's')];
      }),
    ]),
    'numbers',
  );
  return part(
    setPointsTitle,
    html`<p>${targetsSaid(report, found)}</p>${
      found.trends.length > 0 && bullets(found.trends.map((trend) => trendSaid(report, trend)))
    }${folded('Each block', shown)}`,
  );
}
