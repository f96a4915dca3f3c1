import type { Random } from '../random.ts';
import type { Demand, RideKind } from '../ride.ts';
import type { Rider } from '../rider.ts';
import { bunchRace, drawRaceScript } from './bunch-race.ts';
import { groupRideAndFinale, longRide, outdoorRide } from './outdoors.ts';
import { setPointSession } from './set-point.ts';
import { longClimb, shortRace, timeTrial } from './steady.ts';

/** Every kind of ride, each as a function of its rider. `race` names a race that several riders share. */
export function drawDemand(
  kind: RideKind,
  rider: Rider,
  random: Random,
  race: Random,
  minutes?: number,
): Demand {
  switch (kind) {
    case 'bunch race':
      return bunchRace(rider, random, drawRaceScript(race, minutes));
    case 'time trial':
      return timeTrial(rider, random, minutes);
    case 'long climb':
      return longClimb(rider, random, minutes);
    case 'set-point session':
      return setPointSession(rider, random, minutes);
    case 'outdoor ride':
      return outdoorRide(rider, random, minutes);
    case 'group ride and finale':
      return groupRideAndFinale(rider, random, minutes);
    case 'short race':
      return shortRace(rider, random, minutes);
    case 'long ride':
      return longRide(rider, random, minutes);
  }
}
