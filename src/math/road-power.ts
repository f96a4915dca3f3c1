/** What mass and drag area have to overcome. */
export interface Road {
  /** Coefficient of rolling resistance. */
  readonly rolling: number;
  /** Air, kg/m³. */
  readonly density: number;
}

/** Standard acceleration, m/s²; drag area of turning wheels, m² (from memory), inertia over radius squared, kg. */
export const gravity = 9.81;
const wheelDragArea = 0.0044;
const wheelMass = 0.14 / 0.311 ** 2;
/** Efficiency of the chain (Martin et al. 1998). */
export const chainEfficiency = 0.976;

/**
 * The road power model of Martin et al. 1998, J Appl Biomech 14:276-291, in still air, with mass and drag area
 * left open: power at the wheel that they have to account for (W), and what a kilogram and a square metre
 * take of it.
 *
 * @param watts mean power at the wheel
 * @param speed mean speed, m/s
 * @param grade rise over run
 * @param gained change of half the squared speed for each second, m²/s³
 */
export function massTerms(
  { rolling, density }: Road,
  watts: number,
  speed: number,
  grade: number,
  gained: number,
): { readonly left: number; readonly perKg: number; readonly perArea: number } {
  const along = Math.cos(Math.atan(grade));
  const perArea = 0.5 * density * speed ** 3;
  const bearings = (speed * (91 + 8.7 * speed)) / 1000;
  return {
    left: watts - bearings - wheelDragArea * perArea - wheelMass * gained,
    perKg: gravity * speed * along * (rolling + grade) + gained,
    perArea,
  };
}

/**
 * Density of air, kg/m³: dry air and vapour as ideal gases, with the vapour pressure of Buck 1981.
 *
 * @param celsius temperature
 * @param pascal pressure
 * @param humidity relative, 0–1
 */
export function airDensity(celsius: number, pascal: number, humidity: number): number {
  const kelvin = celsius + 273.15;
  const saturated = 611.21 * Math.exp((18.678 - celsius / 234.5) * (celsius / (257.14 + celsius)));
  const vapour = humidity * saturated;
  return (pascal - vapour) / (287.058 * kelvin) + vapour / (461.495 * kelvin);
}
