import type { Chart } from '../types.ts';
/**
 * A drawing in the language that GitHub renders by itself. It knows no logarithmic axis, no gaps and no
 * legend that every version shows: the axis is made of named places, and the legend is text. Nothing but
 * numbers and our own words may enter it.
 */
export interface Mermaid {
    readonly title: string;
    readonly source: string;
    readonly legend: string;
}
/** The chart in this language; null for kinds that it cannot show. */
export declare function mermaid(chart: Chart): Mermaid | null;
/** Bars from nought, one a place. */
export declare function bars(title: string, unit: string, places: readonly {
    readonly name: string;
    readonly value: number;
}[]): Mermaid | null;
