import type { Chart } from '../../types.ts';
import { agreement } from './agreement.ts';
import { averaging } from './averaging.ts';
import { climbs } from './climbs.ts';
import { closeUps } from './close-ups.ts';
import { comb } from './comb.ts';
import { copies } from './copies.ts';
import { coverage } from './coverage.ts';
import { curve } from './curve.ts';
import { dependence } from './dependence.ts';
import { efforts } from './efforts.ts';
import { meters } from './meters.ts';
import type { Picture, Setting } from './picture.ts';
import { plateaus } from './plateaus.ts';
import { ratio } from './ratio.ts';
import { response } from './response.ts';
import { sections } from './sections.ts';
import { speedCurve } from './speed-curve.ts';
import { totals } from './totals.ts';
import { traces } from './traces.ts';
import { traits } from './traits.ts';

export type { Picture, Setting, Strip } from './picture.ts';

/** How each kind of chart is told and drawn. The compiler names the kind that is missing here. */
const kinds: {
  readonly [K in Chart['kind']]: (chart: Extract<Chart, { kind: K }>, setting: Setting) => Picture;
} = {
  traces,
  sections,
  ratio,
  dependence,
  agreement,
  meters,
  efforts,
  curve,
  response,
  'close-ups': closeUps,
  coverage,
  totals,
  comb,
  copies,
  plateaus,
  averaging,
  'speed-curve': speedCurve,
  climbs,
  traits,
};

export function picture(chart: Chart, setting: Setting): Picture {
  const make = kinds[chart.kind] as (chart: Chart, setting: Setting) => Picture;
  return make(chart, setting);
}
