import { nearest } from '../../math/nearest.ts';
import type { Fault } from '../../schema.ts';
import type { Rule } from '../../types.ts';

const fixed = ['value', 'size', 'low', 'high', 'limit'] as const;

/** Every outcome has its sentence, and every sentence can be filled in. */
export function claimFaults(rule: Rule, details: ReadonlySet<string>): Fault[] {
  const limits = Object.values(rule.limits);
  const wanted = [
    { side: 'above', bound: 'at least' },
    { side: 'below', bound: 'at most' },
  ] as const;
  const missing = wanted
    .filter(
      ({ side, bound }) => rule.claims[side] === undefined && limits.some((l) => l[bound] !== undefined),
    )
    .map(({ side, bound }) => ({
      path: ['claims'],
      what: `“${side}” is missing: the rule has an “${bound}” limit, so it needs the sentence that says so`,
    }));
  const unfilled = Object.entries(rule.claims).flatMap(([name, claim]) =>
    placeholdersOf(claim)
      .filter(
        (placeholder) => !details.has(placeholder) && !(fixed as readonly string[]).includes(placeholder),
      )
      .map((placeholder) => {
        const known = [...fixed, ...details];
        const near = nearest(placeholder, known);
        return {
          path: ['claims', name],
          what: `nothing fills in {${placeholder}}`,
          hint:
            near === null
              ? `Known here: ${known.map((word) => `{${word}}`).join(' ')}`
              : `Did you mean {${near}}?`,
        };
      }),
  );
  return [...missing, ...unfilled];
}

/** The names in braces, without those that every rule has. */
export function detailsOf(rule: Pick<Rule, 'claims'>): string[] {
  return Object.values(rule.claims)
    .flatMap(placeholdersOf)
    .filter((name) => !(fixed as readonly string[]).includes(name));
}

/** `{name}`, `{name:unit}`, `{name:at}`, `{name:who}` or `{name|one|many}`; whatever else stands in braces is taken whole. */
function placeholdersOf(claim: string): string[] {
  return Array.from(claim.matchAll(/\{([^{}]*)\}/g), ([, inside]) => inside!.split(/[:|]/)[0]!);
}
