import { describe, expect, it } from 'vitest';
import { kinshipOf, sourceOf } from '../../../src/measure/rider/meters.ts';
import type { Device, PastRide } from '../../../src/types.ts';
import { recordingOf, seriesOf } from '../series.ts';
import { device, meter, pastRides } from './make.ts';

const none: Device = { maker: null, product: null, serial: null };

function kinship(past: Partial<PastRide>, raced: { device?: Device; meter?: Device }) {
  const { meter: _, ...ride } = pastRides('one', { rides: 1, hard: 1 })[0]!;
  const columns = { power: [200, 210] };
  const race = seriesOf(columns, { recording: recordingOf(columns, { device, ...raced }) });
  return kinshipOf({ ...ride, ...past }, race);
}

describe('kinshipOf', () => {
  it('is sure of a meter by its number alone', () => {
    expect(kinship({ meter }, { meter })).toBe('own');
    expect(kinship({ meter }, { meter: { ...meter, serial: '8' } })).toBe('other');
    const model = { ...meter, serial: null };
    expect(kinship({ meter: model }, { meter: model })).toBe('likely own');
    expect(kinship({ meter: model }, { meter })).toBe('likely own');
    expect(kinship({ meter }, { meter: model })).toBe('likely own');
    expect(kinship({ meter }, { meter: { ...model, product: 'crank' } })).toBe('other');
  });
  it('takes no recorder for a meter where one of the two files lists its sensor', () => {
    expect(kinship({ meter }, {})).toBe('unknown');
    expect(kinship({}, { meter })).toBe('unknown');
  });
  it('holds the same recorder for likely where neither does', () => {
    expect(kinship({ device }, { device })).toBe('likely own');
    expect(kinship({ device }, { device: { ...device, serial: null } })).toBe('likely own');
    expect(kinship({ device }, { device: { ...device, serial: '4' } })).toBe('unknown');
    expect(kinship({ device }, { device: { ...device, product: 'app' } })).toBe('unknown');
    expect(kinship({ device: none }, { device: none })).toBe('unknown');
  });
});

describe('sourceOf', () => {
  it('keeps rides of unlisted meters apart by what recorded them', () => {
    const [ride] = pastRides('one', { rides: 1, hard: 1 });
    const { meter: _, ...unlisted } = ride!;
    expect(sourceOf(ride!)).toBe('7');
    expect(sourceOf(unlisted)).not.toBe(sourceOf({ ...unlisted, device: none }));
  });
});
