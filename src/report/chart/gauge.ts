import type { Finding, Raised } from '../../types.ts';
import type { Markup } from '../markup.ts';
import { levelWords } from '../words/grade.ts';
import { type HonestEnds, honestEnds } from '../words/honest.ts';
import { quantity } from '../words/number.ts';
import { box, dot, label, panel, rule, sheet, textWidth } from './frame.ts';

const height = 74;
const middle = 40;
/** Free on either side of the scale. */
const edge = 8;

/**
 * A finding's number on a scale: the value with its interval, the limits of each level, and where honest
 * submissions lie. Null when the number is withheld.
 */
export function gauge(finding: Finding, id: string, description: string): ((width: number) => Markup) | null {
  const { value, interval, expected, unit } = finding;
  if (value === null || interval === null) return null;
  const limits = limitsOf(finding);
  const honest = expected === null ? null : honestEnds(finding, expected.field);
  return (width) => {
    const ends = [honest?.low, honest?.high].filter((end) => typeof end === 'number');
    const known = [value, ...interval, ...limits.map((one) => one.at), ...ends];
    const [low, high] = [Math.min(...known), Math.max(...known)];
    const margin = (high - low) * 0.08 || Math.max(Math.abs(high) * 0.2, 1);
    const on = panel([edge, width - edge], [middle - 9, middle + 9], [low - margin, high + margin], [0, 1]);
    const named = limits.map((one) => ({
      ...one,
      text: `${levelWords[one.level]} ${quantity(one.at, unit)}`,
    }));
    return sheet(id, [width, height], 'The number on a scale', description, [
      honest === null ? null : [band(honest, on.x, width)],
      rule([edge, middle], [width - edge, middle], 'rule'),
      low - margin < 0 && high + margin > 0
        ? [
            rule([on.x(0), middle - 9], [on.x(0), middle + 9], 'quiet'),
            label('0', [on.x(0), middle + 22], 'quiet', 'middle'),
          ]
        : null,
      placed(named, on.x, width).map(({ at, text, x, row }) => [
        rule([on.x(at), middle - 12 - row * 13], [on.x(at), middle + 10], 'quiet', 1.5),
        label(text, [x, middle - 15 - row * 13], 'quiet'),
      ]),
      interval[0] === interval[1]
        ? null
        : rule([on.x(interval[0]), middle], [on.x(interval[1]), middle], 'ink', 3),
      dot([on.x(value), middle], 5.5, 'ink'),
      label(
        quantity(value, unit),
        [clampText(on.x(value), quantity(value, unit), width), middle + 27],
        'ink',
      ),
    ]);
  };
}

/** Where honest submissions lie; to the end of the scale where a side is open. */
function band({ low, high }: HonestEnds, x: (at: number) => number, width: number): Markup {
  return box(
    [low === null ? edge : x(low), high === null ? width - edge : x(high)],
    [middle - 9, middle + 9],
    'band',
  );
}

function limitsOf({ limits }: Finding): readonly { readonly level: Raised; readonly at: number }[] {
  return (['note', 'query', 'refer'] as const).flatMap((level) => {
    const one = limits[level];
    return [one?.atLeast, one?.atMost].flatMap((at) =>
      at === null || at === undefined ? [] : [{ level, at }],
    );
  });
}

function clampText(x: number, text: string, width: number): number {
  const long = textWidth(text);
  return Math.min(Math.max(2, x - long / 2), width - long - 2);
}

/** Labels of the limits in two rows, so that neighbours do not run into each other. */
function placed<T extends { readonly at: number; readonly text: string }>(
  limits: readonly T[],
  x: (value: number) => number,
  width: number,
) {
  const free = [-Infinity, -Infinity];
  return [...limits]
    .sort((a, b) => a.at - b.at)
    .map((one) => {
      const left = clampText(x(one.at), one.text, width);
      const row = left > free[0]! ? 0 : 1;
      free[row] = left + textWidth(one.text) + 8;
      return { ...one, x: left, row };
    });
}
