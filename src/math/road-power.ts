/** What a rider and bicycle have to overcome. */
export interface Road {
  /** Rider and bicycle, kg. */
  readonly massKg: number;
  /** Drag area, m². */
  readonly dragArea: number;
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
 * Power at the wheel (W) without gravity, rolling and change of speed of the mass: drag and bearings, by the
 * model of Martin et al. 1998, J Appl Biomech 14:276-291.
 *
 * @param speed m/s over ground
 * @param air m/s against the air
 */
export function dragPower(
  { dragArea, density }: Omit<Road, 'massKg' | 'rolling'>,
  speed: number,
  air = speed,
): number {
  return 0.5 * density * (dragArea + wheelDragArea) * air * air * speed + (speed * (91 + 8.7 * speed)) / 1000;
}

/** Power at the cranks (W) that holds a speed on a grade (rise over run) by the same model. */
export function roadPower(road: Road, speed: number, grade: number, air = speed): number {
  const along = Math.cos(Math.atan(grade));
  const weight = road.massKg * gravity * speed * along * (road.rolling + grade);
  return (dragPower(road, speed, air) + weight) / chainEfficiency;
}

/**
 * Mass of rider and bicycle (kg) that this power at the wheel moves: the same model solved for mass.
 *
 * @param watts mean power at the wheel
 * @param speed mean speed, m/s
 * @param gained change of half the squared speed for each second, m²/s³
 */
export function movedMass(
  road: Omit<Road, 'massKg'>,
  watts: number,
  speed: number,
  grade: number,
  gained: number,
): number {
  const along = Math.cos(Math.atan(grade));
  const perKg = gravity * speed * along * (road.rolling + grade) + gained;
  return (watts - dragPower(road, speed) - wheelMass * gained) / perKg;
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
