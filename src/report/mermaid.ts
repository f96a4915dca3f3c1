import type { Chart, CurveChart, RatioChart } from '../types.ts';
import { palette } from './chart/palette.ts';
import { condense } from './chart/spark.ts';
import { duration, number, position } from './words/number.ts';

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

const colours = [palette.a[0], palette.b[0], palette.c[0]];
const colourNames = ['blue', 'orange', 'green'];
const theme = `%%{init: {"theme": "base", "themeVariables": {"xyChart": {"plotColorPalette": "${colours.join(', ')}"}}}}%%`;
/** More places than this and their names run into each other. */
const mostPlaces = 18;

interface Line {
  readonly name: string;
  readonly values: readonly number[];
}

/** The chart in this language; null for kinds that it cannot show. */
export function mermaid(chart: Chart): Mermaid | null {
  if (chart.kind === 'curve') return curve(chart);
  if (chart.kind === 'ratio') return ratio(chart);
  return null;
}

/** Bars from nought, one a place. */
export function bars(
  title: string,
  unit: string,
  places: readonly { readonly name: string; readonly value: number }[],
): Mermaid | null {
  if (places.length === 0) return null;
  return {
    title,
    source: [
      theme,
      'xychart-beta',
      `  x-axis [${places.map(({ name }) => `"${name}"`).join(', ')}]`,
      `  y-axis "${unit}" 0 --> ${Math.max(1, ...places.map(({ value }) => value))}`,
      `  bar [${places.map(({ value }) => value).join(', ')}]`,
    ].join('\n'),
    legend: `${title}: ${places.map(({ name, value }) => `${name} ${number(value)}`).join(', ')}.`,
  };
}

function curve({ points }: CurveChart): Mermaid | null {
  const whole = points.flatMap(({ duration: seconds, race, best, allowed }) =>
    race === null || best === null || allowed === null ? [] : [{ seconds, race, best, allowed }],
  );
  const step = Math.ceil(whole.length / mostPlaces);
  const shown = whole.filter((_, index) => index % step === 0);
  return draw(
    'Power–duration curve, W',
    'W',
    shown.map(({ seconds }) => duration(seconds)),
    [
      { name: 'race', values: shown.map((point) => point.race) },
      { name: 'best of the earlier rides', values: shown.map((point) => point.best) },
      { name: 'upper end of what they allow', values: shown.map((point) => point.allowed) },
    ],
  );
}

function ratio({ blocks }: RatioChart): Mermaid | null {
  const percents = condense(
    blocks.map((block) => block.percent),
    mostPlaces,
  ).filter((value) => value !== null);
  const times = condense(
    blocks.map((block) => block.at),
    mostPlaces,
  ).filter((value) => value !== null);
  return draw('Primary over second, %', '%', times.map(position), [
    { name: 'primary over second', values: percents },
    { name: 'equal', values: percents.map(() => 100) },
  ]);
}

function draw(
  title: string,
  unit: string,
  places: readonly string[],
  lines: readonly Line[],
): Mermaid | null {
  if (places.length < 2) return null;
  const all = lines.flatMap((line) => line.values);
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const margin = (high - low) * 0.05 || 1;
  const list = (values: readonly number[]) => values.map((value) => Math.round(value * 10) / 10).join(', ');
  return {
    title,
    source: [
      theme,
      'xychart-beta',
      `  x-axis [${places.map((place) => `"${place.replaceAll('\u00a0', ' ')}"`).join(', ')}]`,
      `  y-axis "${unit}" ${Math.floor(low - margin)} --> ${Math.ceil(high + margin)}`,
      ...lines.map((line) => `  line [${list(line.values)}]`),
    ].join('\n'),
    legend: `Lines: ${lines.map((line, index) => `${line.name} (${colourNames[index]})`).join(', ')}.`,
  };
}
