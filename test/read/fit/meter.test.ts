import { describe, expect, it } from 'vitest';
import type { Decoded } from '../../../src/read/fit/decode.ts';
import { meterOf } from '../../../src/read/fit/summary.ts';

const of = (...deviceInfos: Record<string, unknown>[]) => meterOf({ deviceInfos } as unknown as Decoded);
const headUnit = { device_index: 'creator', manufacturer: 'units', product: 31, serial_number: 12 };
const sensor = { device_type: 'bike_power', source_type: 'antplus', ant_device_number: 20304 };

describe('meterOf', () => {
  it('takes the power sensor, never the head unit', () => {
    expect(of(headUnit)).toBeNull();
    expect(of(headUnit, { ...sensor, manufacturer: 'meters' })).toEqual({
      maker: 'meters',
      product: null,
      serial: '20304',
    });
    // Device types by number where the file does not say by which radio: 11 is power, 120 heart rate.
    expect(of({ device_type: 120, serial_number: 1 }, { device_type: 11, serial_number: 5 })?.serial).toBe(
      '5',
    );
    expect(of({ device_type: 11, source_type: 'local', serial_number: 5 })).toBeNull();
  });

  it('takes one that is listed again and again for one, and two for unknown', () => {
    expect(of({ ...sensor, calibration: 161 }, { ...sensor, product_name: 'm', calibration: 162 })).toEqual({
      maker: null,
      product: 'm',
      serial: '20304',
    });
    expect(of({ device_type: 'bike_power' }, sensor)?.serial).toBe('20304');
    expect(of(sensor, { ...sensor, ant_device_number: 20305 })).toBeNull();
  });
});
