import { describe, expect, it } from 'vitest';
import { unfit } from '../../src/history/sift.ts';
import { sportOf } from '../../src/read/sport.ts';
import { recordingOf } from '../measure/series.ts';

describe('sportOf', () => {
  it('tells a ride with a motor from cycling, also where only the sub-sport says so', () => {
    // Sport and sub-sport as the FIT Profile names them: cycling with e_bike_fitness or e_bike_mountain, e_biking.
    for (const words of [
      'cycling e_bike_fitness',
      'cycling e_bike_mountain',
      'e_biking',
      'E-Bike Ride',
      'EBikeRide',
      'EMountainBikeRide',
      'eMTB',
      'pedelec',
    ])
      expect(sportOf(words)).toBe('e-biking');
    for (const words of [
      'cycling',
      'cycling indoor_cycling',
      'cycling mountain',
      'Biking',
      'cycling spin',
      'Ride',
    ])
      expect(sportOf(words)).toBe('cycling');
  });

  it('does not take a motorcycle for a bicycle', () => {
    expect(sportOf('motorcycling')).toBe('motorcycling');
  });

  it('so that no history holds it', () => {
    const power = Float64Array.from({ length: 600 }, (_, i) => 200 + (i % 7));
    const sport = sportOf('cycling e_bike_fitness');
    expect(unfit(recordingOf({ power }, { sport }))).toBe('other sport');
  });
});
