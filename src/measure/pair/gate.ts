import type { AlignedSecond, NotApplicable } from '../../types.ts';
import { notApplicable } from '../measure.ts';

/** What every comparison of two meters stands on: one clock, and two measurements. */
export function gate({ alignment }: AlignedSecond): NotApplicable | null {
  if (!alignment.secure) return notApplicable('not-secure');
  if (alignment.origin === 'same sensor') return notApplicable('not-independent');
  return null;
}
