/** What a bicycle has to overcome beside its weight. */
interface Road {
  /** Drag area, m². */
  readonly dragArea: number;
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

/** Power at the wheel (W) at a speed (m/s) in still air without gravity, rolling and change of speed: drag and bearings. */
function dragPower({ dragArea, density }: Road, speed: number): number {
  return 0.5 * density * (dragArea + wheelDragArea) * speed ** 3 + (speed * (91 + 8.7 * speed)) / 1000;
}

/**
 * Mass of rider and bicycle (kg) that this power at the wheel moves in still air: the model of Martin et al. 1998,
 * J Appl Biomech 14:276-291, solved for mass.
 *
 * @param watts mean power at the wheel
 * @param speed mean speed, m/s
 * @param grade rise over run
 * @param gained change of half the squared speed for each second, m²/s³
 */
export function movedMass(road: Road, watts: number, speed: number, grade: number, gained: number): number {
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
