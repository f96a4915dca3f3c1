import type { Device, DeviceFacts, Place } from '../types.ts';

/**
 * Where the meter of a past recording sits, if the rider declared it: a device's name is matched with the
 * file's name or with maker and product as the file states them.
 *
 * @param device the power sensor; where the file lists none, what recorded it
 */
export function placeOf(name: string, device: Device, declared: readonly DeviceFacts[]): Place | null {
  const stated = [device.maker, device.product].filter((part) => part !== null).join(' ');
  const same = (text: string) => text.toLowerCase();
  const found = declared.find(
    (facts) => same(facts.name) === same(name) || (stated !== '' && same(facts.name) === same(stated)),
  );
  return found?.place ?? null;
}
