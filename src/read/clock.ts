const stamp =
  /^(\d{4})-(\d\d)-(\d\d)[T ](\d\d):(\d\d)(?::(\d\d(?:[.,]\d{1,9})?))?\s?(?:(Z|UTC|GMT)|([-+])(\d\d):?(\d\d)?)?$/i;

export interface ClockTime {
  /** Seconds since 1970-01-01T00:00:00Z. */
  readonly seconds: number;
  /** False: no zone is named; read as UTC. */
  readonly zoned: boolean;
}

/** An ISO 8601 date and time (also with a space in place of the T); null for anything else. */
export function parseClock(text: string): ClockTime | null {
  const match = stamp.exec(text);
  if (match === null) return null;
  const [, year, month, day, hour, minute, second = '0', utc, sign, zoneHour, zoneMinute = '0'] = match;
  const date = dateSeconds(Number(year), Number(month), Number(day));
  const time = timeSeconds(Number(hour), Number(minute), Number(second.replace(',', '.')));
  if (Number.isNaN(date + time)) return null;
  const zone = sign === undefined ? 0 : (Number(zoneHour) * 60 + Number(zoneMinute)) * 60;
  return {
    seconds: date + time - (sign === '-' ? -zone : zone),
    zoned: utc !== undefined || sign !== undefined,
  };
}

/** Midnight UTC of a calendar day, s; NaN when there is no such day. */
export function dateSeconds(year: number, month: number, day: number): number {
  const at = new Date(Date.UTC(year, month - 1, day));
  return at.getUTCMonth() === month - 1 && at.getUTCDate() === day ? at.getTime() / 1000 : Number.NaN;
}

/** Seconds since midnight; NaN when a part is out of range. A leap second counts as the next minute. */
export function timeSeconds(hour: number, minute: number, second: number): number {
  return hour < 24 && minute < 60 && second < 61 ? hour * 3600 + minute * 60 + second : Number.NaN;
}
