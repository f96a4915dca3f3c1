/** Projection of values, in order of time, on the cosine of so many half waves: Σ v·cos(π·j·(t + ½)/n). */
export function cosineProjection(values: Float64Array, halfWaves: number): number {
  const n = values.length;
  let projection = 0;
  for (let t = 0; t < n; t++) projection += values[t]! * Math.cos((Math.PI * halfWaves * (t + 0.5)) / n);
  return projection;
}
