import { expect, it } from 'vitest';
import { declaredFor, secondRole, withoutPlaces } from '../src/declared.ts';
import type { DeviceFacts } from '../src/types.ts';

const device = (name: string): DeviceFacts => ({ name, place: 'pedal', sides: 2, tolerancePercent: 1 });

it('finds a declaration by file name before one by role', () => {
  const devices = [device('second'), device('pedals.fit')];
  expect(declaredFor(devices, 'pedals.fit', 'second')?.name).toBe('pedals.fit');
  expect(declaredFor(devices, 'other.fit', 'second')?.name).toBe('second');
  expect(declaredFor(undefined, 'other.fit', 'second')).toBeNull();
});

it('counts roles as they were handed in', () => {
  expect([0, 1, 2].map(secondRole)).toEqual(['second', 'second 2', 'second 3']);
});

it('forgets declarations by position, and keeps the others', () => {
  const devices = ['primary', 'second', 'second 2', 'seconds.fit'].map(device);
  const names = withoutPlaces({ massKg: 70, devices }).devices!.map(({ name }) => name);
  expect(names).toEqual(['primary', 'seconds.fit']);
  expect(withoutPlaces({ massKg: 70 })).toEqual({ massKg: 70 });
});
