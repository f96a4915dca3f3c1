import { studentReach } from '../../math/student.ts';

/** Neighbouring blocks of ten seconds resemble each other: lag-1 correlation assumed in the interval. */
const neighbours = 0.3;
/** With fewer blocks there is no interval. */
const leastBlocks = 4;

/**
 * Half the 95 % interval of a mean over short blocks inside a section, from their deviations around it; null
 * where there are too few. Sections are too short to find out how alike neighbours are: that is assumed.
 */
export function blockInterval(deviations: Float64Array): number | null {
  const n = deviations.length;
  if (n < leastBlocks) return null;
  const squares = deviations.reduce((sum, deviation) => sum + deviation ** 2, 0);
  const error = Math.sqrt(squares / (n - 1) / n);
  return studentReach(n - 1) * error * Math.sqrt((1 + neighbours) / (1 - neighbours));
}
