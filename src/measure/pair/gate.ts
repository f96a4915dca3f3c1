import type { AlignedSecond, NotApplicable } from '../../types.ts';
import { notApplicable } from '../measure.ts';

/** What every comparison of two meters stands on: one clock, and two measurements. */
export function gate({ alignment }: AlignedSecond): NotApplicable | null {
  if (!alignment.secure) return notApplicable('not-secure');
  if (alignment.origin === 'same sensor') return notApplicable('not-independent');
  return null;
}

/** Whether a pair's second is a meter of its own, and no other second's twin: an opinion that counts. */
export function isIndependent(pair: AlignedSecond): boolean {
  const { origin, sameAs } = pair.alignment;
  return gate(pair) === null && origin === 'independent' && sameAs === null;
}
