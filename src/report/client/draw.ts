import type { Picture, Setting } from '../chart/picture.ts';
import { ratio } from '../chart/ratio.ts';
import { response } from '../chart/response.ts';
import { traces } from '../chart/traces.ts';
import type { LiveChart } from './pack.ts';

/** The kinds that the page draws again by itself: no other kind's code goes into its script. */
export function picture(chart: LiveChart, setting: Setting): Picture {
  switch (chart.kind) {
    case 'traces':
      return traces(chart, setting);
    case 'ratio':
      return ratio(chart, setting);
    case 'response':
      return response(chart, setting);
  }
}
