import type { Recording } from '../../types.ts';
import { hasValue } from '../columns.ts';

export interface Balance {
  /** Left share of power, %, where the side is known; else the share of one leg; absent where there is none. */
  readonly share: Float64Array | undefined;
  readonly side: Recording['balanceSide'];
}

/** How a stored balance is packed (FIT Profile, type left_right_balance). */
const shareBits = 0x7f;
const rightFlag = 0x80;

/**
 * left_right_balance holds the share of one leg, and a flag that says it is the right one. Without the flag
 * the leg is not known. Where a file sets the flag on some records only, the others are left out: to mix
 * known and unknown legs would invent a change of balance.
 */
export function balanceOf(stored: Float64Array | undefined): Balance {
  const flagged = stored?.some(isRight) ?? false;
  const share = stored?.map((value) => shareOf(value, flagged));
  const side = share === undefined || !hasValue(share) ? null : flagged ? 'right' : 'unknown';
  return { share, side };
}

const isRight = (stored: number) => (stored & rightFlag) !== 0;

function shareOf(stored: number, flagged: boolean): number {
  const share = stored & shareBits;
  if (Number.isNaN(stored) || isRight(stored) !== flagged || share > 100) return Number.NaN;
  return flagged ? 100 - share : share;
}
