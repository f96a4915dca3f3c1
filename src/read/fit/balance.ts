import type { Recording } from '../../types.ts';
import { finite } from '../number.ts';
import type { Message } from './decode.ts';

export interface Balance {
  /** Left share of power, %, where the side is known; else the share of one leg. */
  readonly share: Float64Array;
  readonly side: Recording['balanceSide'];
}

/**
 * left_right_balance holds the share of one leg, and a flag that says it is the right one (FIT Profile, type
 * left_right_balance). Without the flag the leg is not known. Where a file sets the flag on some records
 * only, the others are left out: to mix known and unknown legs would invent a change of balance.
 */
export function balanceOf(records: readonly Message[]): Balance {
  const share = new Float64Array(records.length).fill(Number.NaN);
  const flagged = records.some((record) => parts(record)?.right === true);
  let any = false;
  records.forEach((record, i) => {
    const balance = parts(record);
    if (balance === null || (flagged && balance.right !== true)) return;
    const value = finite(balance.value);
    if (!(value <= 100)) return;
    share[i] = flagged ? 100 - value : value;
    any = true;
  });
  return { share, side: !any ? null : flagged ? 'right' : 'unknown' };
}

function parts(record: Message): { value?: unknown; right?: unknown } | null {
  const balance = record.left_right_balance;
  return typeof balance === 'object' && balance !== null ? balance : null;
}
