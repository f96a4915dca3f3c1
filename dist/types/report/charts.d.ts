import type { Report } from '../types.ts';
/** One chart as a drawing of its own, correct wherever it is opened. */
export interface ChartFile {
    /** A name for it that no measure or rule file can choose: "03-efforts.svg". */
    readonly name: string;
    readonly svg: string;
}
/** Every chart of the report as a standalone SVG file, `width` pixels wide. */
export declare function renderCharts(report: Report, { width }: {
    readonly width: number;
}): readonly ChartFile[];
/** Whether a chart may bear this name, on disks that tell capitals apart and on others. */
export declare const isChartName: (name: string) => boolean;
