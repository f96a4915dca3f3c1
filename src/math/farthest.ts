import { beyondEnd, normalQuantile, normalReach } from './normal.ts';

/**
 * How many times as wide as the range of one value the range must be that holds 95 of 100 times whichever of
 * several lies farthest out: any of them could have been it, so that the twentieth outside is shared among all
 * (Bonferroni's inequality: never too narrow, and close where two are rarely out at once). For three normal
 * values, each against the mean of the other two, 2.394 standard deviations in place of 1.960.
 */
export function widthOfFarthest(count: number): number {
  return normalQuantile(1 - beyondEnd / count) / normalReach;
}
