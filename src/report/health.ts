import type { Rule } from '../types.ts';

/** Measures that make use of body mass where it is stated, though they can do without. */
const useMass: readonly string[] = ['torque-share'];

/** Whether a rule's numbers rest on body mass. */
export function restsOnMass({ needs, measure }: Rule): boolean {
  return useMass.includes(measure) || needs.some((need) => /mass|weight/i.test(need));
}

/** Whether a rule's numbers rest on health data: heart rate or body mass. */
export function restsOnHealth(rule: Rule): boolean {
  return restsOnMass(rule) || rule.needs.some((need) => /heart/i.test(need));
}
