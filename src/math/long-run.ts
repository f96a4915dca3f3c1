import { cosineProjection } from './cosine-projection.ts';
import { mean } from './mean.ts';
import { studentReach } from './student.ts';

export interface MeanWithError {
  readonly mean: number;
  readonly error: number;
  /** Multiplies the error into half a 95 % interval. */
  readonly reach: number;
}

/**
 * Mean of values in order of time that resemble their neighbours, with an error that counts that in: the
 * long-run variance as the mean of squared projections on the first cosines (Müller 2004; equal-weighted
 * cosine estimator of Lazarus, Lewis, Stock & Watson 2018), with as many degrees of freedom as cosines.
 *
 * @param values more than there are cosines
 */
export function longRunMean(values: Float64Array): MeanWithError {
  const n = values.length;
  const centre = mean(values);
  const around = values.map((value) => value - centre);
  let squares = 0;
  for (let j = 1; j <= cosines; j++) squares += cosineProjection(around, j) ** 2 * (2 / n);
  return { mean: centre, error: Math.sqrt(squares / cosines / n), reach: studentReach(cosines) };
}

/** Low ones alone: what is slow moves two meters apart most. */
const cosines = 6;
