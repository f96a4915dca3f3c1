import type { Device, Lap, Stretch, Totals } from '../../types.ts';
import { finite } from '../number.ts';
import { sportOf } from '../sport.ts';
import { shortName } from '../text.ts';
import { combineTotals, stated } from '../totals.ts';
import type { Decoded, Message } from './decode.ts';

/** Who made the file: file_id, and where it is silent the device_info of the recorder itself. */
export function deviceOf(decoded: Decoded): Device {
  const creator = decoded.deviceInfos.find(
    (info) => info.device_index === 'creator' || info.device_index === 0,
  );
  const sources = [...decoded.fileIds, ...(creator === undefined ? [] : [creator])];
  const first = (...names: string[]) => {
    for (const name of names) {
      for (const source of sources) {
        const value = shortName(source[name]);
        if (value !== null) return value;
      }
    }
    return null;
  };
  return {
    maker: first('manufacturer'),
    product: first('product_name', 'product'),
    serial: first('serial_number'),
  };
}

/**
 * The power sensor by its own device_info (device type 11 of ANT+, bike_power): null where the file lists
 * none, or two that are not the same.
 */
export function meterOf(decoded: Decoded): Device | null {
  const infos = decoded.deviceInfos.filter(
    ({ device_type: type, source_type: source }) =>
      type === 'bike_power' || (type === 11 && source !== 'local'),
  );
  const first = (info: Message, ...names: string[]) =>
    names.map((name) => shortName(info[name])).find((value) => value !== null) ?? null;
  const meters = infos.map((info) => ({
    maker: first(info, 'manufacturer'),
    product: first(info, 'product_name', 'product'),
    serial: first(info, 'serial_number', 'ant_id', 'ant_device_number'),
  }));
  const known = meters.filter(({ serial }) => serial !== null);
  const said = known.length > 0 ? known : meters;
  const one = said.find(({ maker, product }) => maker !== null || product !== null) ?? said[0];
  return one === undefined || said.some(({ serial }) => serial !== one.serial) ? null : one;
}

/**
 * "cycling indoor_cycling …": all that the file says of its sport. Of several sports a ride with a motor comes
 * first, for nobody can tell its power from the rest, then cycling.
 */
export function sportWords(decoded: Decoded): string | null {
  const said = [...decoded.sessions, ...decoded.sports]
    .map((message) => [shortName(message.sport), shortName(message.sub_sport)])
    .filter(([sport]) => sport !== null)
    .map((words) => words.filter((word) => word !== null && word !== 'generic').join(' '));
  const assisted = said.find((words) => sportOf(words) === 'e-biking');
  return assisted ?? said.find((words) => words.startsWith('cycling')) ?? said[0] ?? null;
}

/** Timer pauses from the recorder's own events: from a stop to the next start. */
export function pausesOf(events: readonly Message[]): Stretch[] {
  const pauses: Stretch[] = [];
  let stopped = Number.NaN;
  for (const { event, event_type: type, timestamp } of events) {
    if (event !== 'timer' || typeof type !== 'string') continue;
    const at = clock(timestamp);
    if (type.startsWith('stop')) {
      if (Number.isNaN(stopped)) stopped = at;
    } else if (type === 'start') {
      if (at > stopped) pauses.push([stopped, at]);
      stopped = Number.NaN;
    }
  }
  return pauses;
}

export function lapsOf(laps: readonly Message[]): Lap[] {
  return laps.flatMap((lap) => {
    const from = clock(lap.start_time);
    const elapsed = finite(lap.total_elapsed_time);
    const to = Number.isNaN(elapsed) ? clock(lap.timestamp) : from + elapsed;
    const meanPower = finite(lap.avg_power);
    if (!(to > from)) return [];
    return [Number.isNaN(meanPower) ? { from, to } : { from, to, meanPower }];
  });
}

/** The totals of a file's sessions together. */
export function totalsOf(sessions: readonly Message[]): Totals {
  const combined = combineTotals(sessions.map(sessionTotals));
  return { ...combined, ...stated({ elapsedS: elapsed(sessions) }) };
}

function sessionTotals(session: Message): Totals {
  return stated({
    meanPower: finite(session.avg_power),
    maxPower: finite(session.max_power),
    meanCadence: finite(session.avg_cadence),
    meanHeartRate: finite(session.avg_heart_rate),
    maxHeartRate: finite(session.max_heart_rate),
    workJ: finite(session.total_work),
    timerS: finite(session.total_timer_time),
    distanceM: finite(session.total_distance),
  });
}

/** From the first start to the last end, as the sessions state them; of one session, its elapsed time. */
function elapsed(sessions: readonly Message[]): number {
  const lengths = sessions.map((session) => finite(session.total_elapsed_time));
  if (sessions.length <= 1) return lengths[0] ?? Number.NaN;
  const starts = sessions.map((session) => clock(session.start_time));
  return Math.max(...starts.map((start, i) => start + lengths[i]!)) - Math.min(...starts);
}

/** Seconds since 1970 of any decoded time; NaN when there is none. */
function clock(value: unknown): number {
  return value instanceof Date ? value.getTime() / 1000 : Number.NaN;
}
