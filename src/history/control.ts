import { settings } from './settings.ts';

/**
 * Share of the pedalling minutes (0–1) in which power stayed so even that a trainer, not the rider, must
 * have set it. Such minutes show what was asked of the rider, not what they could have done.
 */
export function controlledShare(power: Float64Array): number {
  let pedalling = 0;
  let controlled = 0;
  for (let from = 0; from + settings.controlBlock <= power.length; from += settings.controlBlock) {
    const variation = variationOfMeans(power, from);
    if (variation === null) continue;
    pedalling++;
    if (variation < settings.controlVariation) controlled++;
  }
  return pedalling === 0 ? 0 : controlled / pedalling;
}

/** SD of the short means as a share of their mean; null where the block is not pedalled through. */
function variationOfMeans(power: Float64Array, from: number): number | null {
  const means = settings.controlBlock / settings.controlMeans;
  let sum = 0;
  let squares = 0;
  for (let k = 0; k < means; k++) {
    let short = 0;
    for (let i = 0; i < settings.controlMeans; i++) short += power[from + k * settings.controlMeans + i]!;
    const mean = short / settings.controlMeans;
    if (!(mean >= settings.pedallingWatts)) return null;
    sum += mean;
    squares += mean * mean;
  }
  const mean = sum / means;
  return Math.sqrt(Math.max(0, (squares - sum * mean) / (means - 1))) / mean;
}
