import type { Fault } from '../../schema.ts';
import type { Rule } from '../../types.ts';
import { verdictOf } from '../judge.ts';
import { canCompare } from '../limit.ts';

/** The examples of a rule, judged by its own limits, get the levels that they are listed with. */
export function exampleFaults(rule: Rule): Fault[] {
  return rule.examples.flatMap((example, i): Fault[] => {
    const place = `${i + 1}`;
    const path = ['examples', place];
    const [low, high] = example.interval;
    if (low > example.value || high < example.value) {
      return [
        { path: [...path, 'interval'], what: `[${low}, ${high}] does not hold the value ${example.value}` },
      ];
    }
    if (!canCompare(rule, example)) {
      const what = 'the limits are multiples of a spread, so the example must say what is “expected”';
      return [{ path, what }];
    }
    const { level } = verdictOf(rule, example);
    if (level === example.level) return [];
    return [
      {
        path,
        what: `example ${place} is listed as ${example.level}, but the limits now make it ${level}`,
        hint: 'Change the example too, or the limit back',
      },
    ];
  });
}
