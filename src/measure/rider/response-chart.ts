import type { ResponseChart } from '../../types.ts';
import type { HeartBlocks } from './heart-blocks.ts';

/**
 * Heart rate block by block beside what power predicts.
 *
 * @param predict heart rate (bpm) that goes with power as the heart follows it (W)
 */
export function responseChart(
  id: string,
  { at, watts, followed, heartRate }: HeartBlocks,
  predict: (followed: number) => number,
): ResponseChart {
  return {
    kind: 'response',
    id,
    blocks: Array.from(at, (second, i) => ({
      at: second,
      watts: watts[i]!,
      heartRate: heartRate[i]!,
      predicted: predict(followed[i]!),
    })),
  };
}
