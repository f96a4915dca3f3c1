import type { Defect, ExtraMeter } from '../../types.ts';
import { assemble } from '../columns.ts';
import type { Parsed } from '../format.ts';
import { isMeterName } from '../meters.ts';
import { finite } from '../number.ts';
import { indoorsOf, sportOf } from '../sport.ts';
import { balanceOf } from './balance.ts';
import { clock, column, nativeNames, plainChannels } from './channels.ts';
import { type Decoded, decode, type Message } from './decode.ts';
import type { DeveloperField, DeveloperFields } from './developer.ts';
import { findParts, type Part } from './parts.ts';
import { nativePower, oddPowerTypes } from './power.ts';
import { deviceOf, lapsOf, meterOf, pausesOf, sportWords, totalsOf } from './summary.ts';

/**
 * Reads a FIT file. Strict first: header, sizes, framing and checksum of each chained part are checked, and
 * intact parts decoded as they are; of a damaged part the whole messages before the damage are decoded, with
 * a defect that says so.
 *
 * @throws Problem `format-damaged` when nothing can be followed, `format-limits` beyond what is taken in.
 */
export function readFit(bytes: Uint8Array): Parsed {
  const { parts, defects } = findParts(bytes);
  const known: DeveloperFields = new Map();
  const decoded = together(parts.map((part) => decode(bytes, part, known)));
  const { records, sessions } = decoded;
  const developerFields = [...known.values()];
  const channels = plainChannels(records);
  const oddPower = recoverPower(bytes, parts, channels.power!);
  const balance = balanceOf(records);
  const { defects: columnDefects, ...columns } = assemble({
    time: column(records, (record) => clock(record.timestamp)),
    channels: { ...channels, balance: balance.share },
    meters: developerMeters(records, developerFields),
  });
  const words = sportWords(decoded);
  const meter = meterOf(decoded);
  return {
    ...columns,
    sport: sportOf(words),
    indoors: indoorsOf(words, records.some(hasPosition)),
    device: deviceOf(decoded),
    ...(meter === null ? {} : { meter }),
    balanceSide: balance.side,
    pauses: pausesOf(decoded.events),
    laps: lapsOf(decoded.laps),
    totals: totalsOf(sessions),
    defects: [
      ...defects,
      ...(sessions.length > 1
        ? [{ id: 'several-sessions', values: { sessions: sessions.length } } as const]
        : []),
      ...collisions(developerFields),
      ...oddPower,
      ...columnDefects,
    ],
  };
}

function together(parts: readonly Decoded[]): Decoded {
  if (parts.length === 1) return parts[0]!;
  return {
    fileIds: parts.flatMap((part) => part.fileIds),
    deviceInfos: parts.flatMap((part) => part.deviceInfos),
    sports: parts.flatMap((part) => part.sports),
    sessions: parts.flatMap((part) => part.sessions),
    laps: parts.flatMap((part) => part.laps),
    events: parts.flatMap((part) => part.events),
    records: parts.flatMap((part) => part.records),
  };
}

/** Fills in, in place, native power that the decoder drops for its wire type. */
function recoverPower(bytes: Uint8Array, parts: readonly Part[], power: Float64Array): Defect[] {
  const types = new Set(parts.flatMap(oddPowerTypes));
  if (types.size > 0) {
    const native = parts.flatMap((part) => [...nativePower(bytes, part)]);
    for (let i = 0; i < power.length; i++) if (Number.isNaN(power[i]!)) power[i] = native[i]!;
  }
  return [...types].map((type) => ({ id: 'odd-power-type', values: { type } }));
}

function developerMeters(records: readonly Message[], fields: readonly DeveloperField[]): ExtraMeter[] {
  return fields
    .filter(({ name, units }) => isMeterName(name, units))
    .map(({ key, name }) => ({ name, power: column(records, (record) => finite(record[key])) }));
}

function collisions(fields: readonly DeveloperField[]): Defect[] {
  return [...new Set(fields.map(({ name }) => name))]
    .filter((name) => nativeNames.has(name))
    .map((name) => ({ id: 'colliding-field', values: { name } }));
}

function hasPosition(record: Message): boolean {
  return typeof record.position_lat === 'number' || typeof record.position_long === 'number';
}
