import type { TraitsChart } from '../../types.ts';
import { limit, quantity, range } from '../words/number.ts';
import { foreignText } from '../words/sentence.ts';
import { box, dot, gutter, heading, label, panel, rule, sheet } from './frame.ts';
import type { Picture, Setting } from './picture.ts';

const rowHeight = 40;

type Trait = TraitsChart['traits'][number];

/** What every rider shows, and how much of it this recording shows: a scale a trait, each in its own unit. */
export function traits(chart: TraitsChart, setting: Setting): Picture {
  const description = `Things that every rider shows, each on its own scale; the range in which riders lie is shaded. ${chart.traits
    .map(
      (trait) =>
        `${foreignText(trait.trait)}: ${quantity(trait.value, trait.unit)}, ${trait.shown ? 'shown' : 'not shown'}`,
    )
    .join('; ')}.`;
  return {
    title: 'What every rider shows',
    description,
    table: {
      head: ['trait', 'this recording', 'riders show', 'shown'],
      rows: chart.traits.map((trait) => [
        foreignText(trait.trait),
        quantity(trait.value, trait.unit),
        people(trait),
        trait.shown ? 'yes' : 'no',
      ]),
    },
    strip: null,
    draw: (width) => {
      const top = gutter.title + 6;
      const height = top + chart.traits.length * rowHeight;
      const sides = [14, width - 14] as const;
      const drawn = chart.traits.map((trait, index) => {
        const y = top + index * rowHeight + 26;
        const { value, atLeast, atMost } = trait;
        const known = [value, atLeast ?? value, atMost ?? value];
        const spread = Math.max(Math.max(...known) - Math.min(...known), Math.abs(value) * 0.2, 1e-3);
        const on = panel(
          sides,
          [y - 5, y + 5],
          [Math.min(...known) - spread / 2, Math.max(...known) + spread / 2],
          [0, 1],
        );
        return [
          label(`${foreignText(trait.trait)}: ${quantity(value, trait.unit)}`, [sides[0], y - 10], 'ink'),
          label(people(trait), [sides[1], y - 10], 'quiet', 'end'),
          box(
            [atLeast === null ? on.left : on.x(atLeast), atMost === null ? on.right : on.x(atMost)],
            [y - 4, y + 4],
            'band',
          ),
          rule([on.left, y], [on.right, y], 'rule'),
          dot([on.x(value), y], 4.5, trait.shown ? 'a' : 'b'),
        ];
      });
      return sheet(setting.id, [width, height], 'What every rider shows', description, [
        drawn,
        heading({ ...panel(sides, [top, height], [0, 1], [0, 1]) }, '', [
          { name: 'where riders lie', role: 'band', mark: 'area' },
          { name: 'shown', role: 'a', mark: 'dot' },
          { name: 'not shown', role: 'b', mark: 'dot' },
        ]),
      ]);
    },
  };
}

function people({ atLeast, atMost, unit }: Trait): string {
  return atLeast !== null && atMost !== null
    ? (range([atLeast, atMost], unit) ?? quantity(atLeast, unit))
    : (limit({ atLeast, atMost, end: 'estimate' }, unit) ?? 'any');
}
