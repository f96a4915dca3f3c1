import type { HonestRange, Measured, Measurement, Outcome, Quantity, Unit, Value } from '../types.ts';
import { roundTo, toFigures } from '../units.ts';

/** Figures kept of a bare number in the details, which has no unit to say how many decimals it carries. */
const figures = 6;

/**
 * Rounds a measurement to what is printed of it. This happens once, before judging, so that the value
 * judged is the value printed, and the same bytes come out whatever the last bit of a logarithm was.
 */
export function roundMeasurement(measurement: Measurement): Measurement {
  return { ...measurement, outcome: roundOutcome(measurement.outcome) };
}

function roundOutcome(outcome: Outcome): Outcome {
  return outcome.state === 'measured' ? roundMeasured(outcome) : outcome;
}

function roundMeasured(measured: Measured): Measured {
  const { unit, interval, expected, chance } = measured;
  return {
    ...measured,
    value: roundTo(measured.value, unit),
    interval: [roundTo(interval[0], unit), roundTo(interval[1], unit)],
    ...(expected === undefined
      ? {}
      : {
          expected: {
            declared: roundRange(expected.declared, unit),
            field: roundRange(expected.field, unit),
          },
        }),
    ...(chance === undefined ? {} : { chance: toFigures(chance, 2) }),
    details: Object.fromEntries(
      Object.entries(measured.details).map(([name, value]) => [name, roundValue(value)]),
    ),
  };
}

function roundRange(range: HonestRange, unit: Unit): HonestRange {
  return { centre: roundTo(range.centre, unit), spread: roundTo(range.spread, unit) };
}

function roundValue(value: Value): Value {
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return toFigures(value, figures);
  return roundQuantity(value);
}

function roundQuantity({ value, unit }: Quantity): Quantity {
  return { value: roundTo(value, unit), unit };
}
