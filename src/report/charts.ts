import type { Report } from '../types.ts';
import { picture } from './chart/index.ts';
import { layOut, markedOn } from './page/layout.ts';
import { meterName } from './words/subject.ts';

/** One chart as a drawing of its own, correct wherever it is opened. */
export interface ChartFile {
  /** A name for it that no measure or rule file can choose: "03-efforts.svg". */
  readonly name: string;
  readonly svg: string;
}

/** Every chart of the report as a standalone SVG file, `width` pixels wide. */
export function renderCharts(report: Report, { width }: { readonly width: number }): readonly ChartFile[] {
  const layout = layOut(report);
  return report.charts.map((chart, index) => {
    const { draw } = picture(chart, {
      id: 'chart',
      marked: markedOn(layout, chart),
      meter: (subject) => meterName(report, subject),
    });
    return {
      name: `${String(index + 1).padStart(2, '0')}-${chart.kind}.svg`,
      svg: `<?xml version="1.0" encoding="UTF-8"?>\n${draw(width)}\n`,
    };
  });
}

/** Whether a chart may bear this name, on disks that tell capitals apart and on others. */
export const isChartName = (name: string) => /^\d{2,}-[a-z-]+\.svg$/i.test(name);
