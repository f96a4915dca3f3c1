import type { Completeness } from '../../types.ts';
import { counted, duration } from './number.ts';

/** What a profile is good for, in three or four sentences: how complete it is, and where its bests can be trusted. */
export function completenessSaid({
  rides,
  days,
  longestPause,
  heartRate,
  meters,
  ...bests
}: Completeness): string {
  const { confirmed, alone } = bests;
  const over = `They lie within ${counted(days, 'day')}, the longest time without one being ${counted(longestPause, 'day')}.`;
  const told = `With heart rate: ${heartRate} of ${rides}; with a power sensor named in the file: ${meters} of ${rides}.`;
  const trusted =
    confirmed.length === 0
      ? 'No best is confirmed by a second ride that comes near it: this history says little of what its rider can do.'
      : `A second ride comes near the best over ${listed(confirmed)}.`;
  const open =
    alone.length === 0 || confirmed.length === 0
      ? []
      : [`Over ${listed(alone)} the best stands alone: the rider may be able to do more.`];
  return [over, told, trusted, ...open].join(' ');
}

function listed(seconds: readonly number[]): string {
  const said = seconds.map(duration);
  return said.length < 2 ? said.join('') : `${said.slice(0, -1).join(', ')} and ${said.at(-1)}`;
}
