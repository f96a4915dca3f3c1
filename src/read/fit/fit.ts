import type { Defect } from '../../types.ts';
import { assemble } from '../columns.ts';
import type { Parsed } from '../format.ts';
import { indoorsOf, sportOf } from '../sport.ts';
import { balanceOf } from './balance.ts';
import { plainChannels } from './channels.ts';
import { type Decoded, decode } from './decode.ts';
import { findParts } from './parts.ts';
import { type RecordColumns, recordFields } from './record-fields.ts';
import { readRecords } from './records.ts';
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
  const decoded = together(parts.map((part) => decode(bytes, part)));
  const { sessions } = decoded;
  const records = readRecords(bytes, parts);
  const balance = balanceOf(records.columns.left_right_balance);
  const { defects: columnDefects, ...columns } = assemble({
    time: records.columns.timestamp ?? new Float64Array(records.length).fill(Number.NaN),
    channels: { ...plainChannels(records.columns), balance: balance.share },
    meters: records.meters,
  });
  const words = sportWords(decoded);
  const meter = meterOf(decoded);
  return {
    ...columns,
    sport: hasMotor(records.columns) ? 'e-biking' : sportOf(words),
    indoors: indoorsOf(words, records.located),
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
      ...collisions(records.developerNames),
      ...records.oddPowerTypes.map((type) => ({ id: 'odd-power-type', values: { type } }) as const),
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
  };
}

function collisions(developerNames: ReadonlySet<string>): Defect[] {
  return [...developerNames]
    .filter((name) => Object.hasOwn(recordFields, name))
    .map((name) => ({ id: 'colliding-field', values: { name } }));
}

/**
 * Only a bicycle with a motor tells of its battery or its help, whatever sport its rider chose. A recorder may
 * write 0 into both of any ride.
 */
function hasMotor({ ebike_battery_level, ebike_assist_mode }: RecordColumns): boolean {
  return [ebike_battery_level, ebike_assist_mode].some((told) => told?.some((value) => value > 0));
}
