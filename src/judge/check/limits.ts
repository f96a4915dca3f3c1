import type { Fault } from '../../schema.ts';
import type { Limit, Raised, Rule } from '../../types.ts';
import { rank } from '../judge.ts';
import { raisedLevels } from '../limit.ts';

type Bound = 'at least' | 'at most';

/** The limits of a rule make sense together: each can act, none stands in another's way. */
export function limitFaults(rule: Rule): Fault[] {
  const set = raisedLevels.flatMap((level) => {
    const limit = rule.limits[level];
    return limit === undefined ? [] : [{ level, limit }];
  });
  if (set.length === 0) {
    return [
      {
        path: ['limits'],
        what: 'a rule without a limit has no effect',
        hint: 'To stop asking the question, give the reason in “off”',
      },
    ];
  }
  return [
    ...set.flatMap(({ level, limit }) => singleFaults(level, limit)),
    ...set.flatMap((lower, i) => set.slice(i + 1).flatMap((upper) => orderFaults(lower, upper))),
    ...highestFaults(
      rule,
      set.map(({ level }) => level),
    ),
    ...ceilingFaults(rule),
  ];
}

function singleFaults(level: Raised, limit: Limit): Fault[] {
  const path = ['limits', level];
  const { 'at least': atLeast, 'at most': atMost } = limit;
  if (atLeast === undefined && atMost === undefined) {
    return [{ path, what: 'a limit without “at least” or “at most” has no effect' }];
  }
  const faults: Fault[] = [];
  if (atLeast !== undefined && atMost !== undefined && atLeast <= atMost) {
    faults.push({
      path,
      what: `every value is at least ${atLeast} or at most ${atMost}: the limit would always act`,
      hint: '“at least” must lie above “at most”',
    });
  }
  if (level === 'refer' && limit.of === 'declared spread') {
    faults.push({
      path: [...path, 'of'],
      what: 'a declared tolerance may tighten a query, but a referral goes by the spread found in the field',
      hint: 'Write “field spread”',
    });
  }
  return faults;
}

interface Set {
  readonly level: Raised;
  readonly limit: Limit;
}

/** Limits in different measures (value, declared spread, field spread) cannot be put in order here. */
function orderFaults(lower: Set, upper: Set): Fault[] {
  if (lower.limit.of !== upper.limit.of) return [];
  return (['at least', 'at most'] as const).flatMap((bound) => boundFaults(bound, lower, upper));
}

function boundFaults(bound: Bound, lower: Set, upper: Set): Fault[] {
  const low = lower.limit[bound];
  const up = upper.limit[bound];
  if (low === undefined || up === undefined) return [];
  const path = ['limits', upper.level, bound];
  const strictness = bound === 'at least' ? up - low : low - up;
  const direction = bound === 'at least' ? 'above' : 'below';
  if (strictness < 0) {
    return [
      {
        path,
        what: `${upper.level} (${bound} ${up}) is looser than ${lower.level} (${bound} ${low})`,
        hint: `The limit of the higher level must lie ${direction} the other`,
      },
    ];
  }
  if (upper.limit.end === 'estimate' && lower.limit.end === 'cautious') {
    return [
      {
        path: ['limits', upper.level, 'end'],
        what: `${upper.level} asks only for the estimate while ${lower.level} asks for the cautious end`,
        hint: 'The higher level must not be the easier one',
      },
    ];
  }
  if (strictness === 0 && upper.limit.end === lower.limit.end) {
    return [
      {
        path: ['limits', lower.level, bound],
        what: `it has no effect: ${upper.level} begins at the same value (${bound} ${low})`,
        hint: `Move one of the two, or take one away with null`,
      },
    ];
  }
  return [];
}

function highestFaults({ highest }: Rule, set: readonly Raised[]): Fault[] {
  const top: Raised = highest === 'incomplete' ? 'note' : highest;
  const beyond = set.filter((level) => rank(level) > rank(top));
  if (beyond.length > 0) {
    return beyond.map((level) => ({
      path: ['limits', level],
      what: `the rule's highest level is ${highest}, so it cannot have a limit for ${level}`,
      hint: `Raise “highest”, or take the limit away: "limits": { "${level}": null }`,
    }));
  }
  if (set.includes(top)) return [];
  return [
    {
      path: ['highest'],
      what: `it has no effect: no limit makes ${top === highest ? top : `a ${top}`}`,
      hint: `Give “limits” a ${top}, or lower “highest” to ${set.at(-1)}`,
    },
  ];
}

function ceilingFaults({ ceilings, highest }: Rule): Fault[] {
  const top = rank(highest === 'incomplete' ? 'note' : highest);
  return ceilings.flatMap(({ level }, i) =>
    rank(level) < top
      ? []
      : [
          {
            path: ['ceilings', `${i + 1}`],
            what: `it has no effect: the rule never goes beyond ${highest} anyway`,
          },
        ],
  );
}
