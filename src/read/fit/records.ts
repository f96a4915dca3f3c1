import { Problem } from '../../problem.ts';
import type { ExtraMeter } from '../../types.ts';
import { limits } from '../limits.ts';
import { isMeterName } from '../meters.ts';
import { baseTypeOf, isNumber, numberAt, type Stored } from './base-types.ts';
import { undecodable } from './damage.ts';
import { type DeveloperField, describedField, keyOf } from './developer.ts';
import type { Part } from './parts.ts';
import {
  type RecordColumns,
  type RecordFieldName,
  recordFieldName,
  recordFields,
  storedType,
} from './record-fields.ts';
import { type Definition, freshAllowance, kinds, timeBits, timeInHeader, walk } from './walk.ts';

/** What the record messages of a file hold. */
export interface Records {
  /** How many there are. */
  readonly length: number;
  readonly columns: RecordColumns;
  /** Developer fields that may be meters of their own. */
  readonly meters: readonly ExtraMeter[];
  /** Names of all developer fields that the file describes. */
  readonly developerNames: ReadonlySet<string>;
  /** Base types other than the profile's in which power is stored. */
  readonly oddPowerTypes: readonly string[];
  /** Whether any record holds a position; the position itself goes nowhere. */
  readonly located: boolean;
}

/** A stored number, and the column where number / scale + shift belongs. */
interface Cell extends Stored {
  readonly column: Float64Array;
  readonly scale: number;
  readonly shift: number;
}

/** What to take from the messages of one definition. */
interface Plan {
  readonly time: Stored | null;
  readonly cells: Cell[];
  readonly positions: Stored[];
}

const nothing: Plan = { time: null, cells: [], positions: [] };

/** Records in a row that one plan reads, a column at a time: where their contents begin. */
interface Run {
  readonly places: Uint32Array;
  count: number;
}

/** The records of all parts as they are being read. */
interface Sheet {
  readonly length: number;
  readonly columns: Map<RecordFieldName, Float64Array>;
  /** By place and name: an app may describe a place anew, and two apps may give their fields one name. */
  readonly meters: Map<string, ExtraMeter>;
  readonly developerNames: Set<string>;
  readonly powerTypes: Set<number>;
  row: number;
  located: boolean;
}

/**
 * Reads the record messages of all parts straight into columns. A ride has one a second, of some ten fields
 * each: made into objects first, they would cost several times what everything else in the file does.
 *
 * @throws Problem `format-damaged` when a time leaves the range of the format, `format-limits` when there are too
 *   many fields that may be meters.
 */
export function readRecords(bytes: Uint8Array, parts: readonly Part[]): Records {
  const sheet: Sheet = {
    length: parts.reduce((sum, { records }) => sum + records, 0),
    columns: new Map(),
    meters: new Map(),
    developerNames: new Set(),
    powerTypes: new Set(),
    row: 0,
    located: false,
  };
  for (const part of parts) readPart(bytes, part, sheet);
  return {
    length: sheet.length,
    columns: Object.fromEntries(sheet.columns),
    meters: [...sheet.meters.values()],
    developerNames: sheet.developerNames,
    oddPowerTypes: [...sheet.powerTypes]
      .filter((type) => type !== recordFields.power.type.id)
      .map((type) => baseTypeOf(type)?.name ?? `type ${type}`),
    located: sheet.located,
  };
}

function readPart(bytes: Uint8Array, { start, headerSize, end, records }: Part, sheet: Sheet): void {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const described = new Map<number, DeveloperField>();
  const plans = new Map<Definition, Plan>();
  const run: Run = { places: new Uint32Array(records), count: 0 };
  let planned: Definition | null = null;
  let plan = nothing;
  // The last time of any message, in the file's own count: a compressed header continues it.
  let time = Number.NaN;
  walk(bytes, start + headerSize, end, freshAllowance(), (definition, at) => {
    if (definition !== planned) {
      fillRows(sheet, plan, view, run);
      plan = plans.get(definition) ?? planOf(definition, described, sheet);
      plans.set(definition, plan);
      planned = definition;
    }
    const lastBits = timeInHeader(bytes[at - 1]!);
    if (lastBits !== null) time = continued(time, lastBits);
    else if (plan.time !== null) time = numberAt(plan.time, view, at);

    if (definition.kind === kinds.record) {
      if (lastBits !== null && !Number.isNaN(time)) {
        columnOf(sheet, 'timestamp')[sheet.row + run.count] = time + recordFields.timestamp.shift;
      }
      run.places[run.count++] = at;
    } else if (definition.kind === kinds.fieldDescription) {
      const field = describedField(bytes, definition, at);
      if (field === null) return;
      described.set(field.key, field);
      sheet.developerNames.add(field.name);
      if (isMeter(field)) meterOf(sheet, field);
      plans.clear();
      planned = null;
    }
  });
  fillRows(sheet, plan, view, run);
}

/** The first time from `time` on that ends in these bits (FIT Protocol, "Compressed Timestamp Header"). */
function continued(time: number, lastBits: number): number {
  const next = time + ((lastBits - time) & timeBits);
  if (next >= recordFields.timestamp.type.invalid) throw undecodable();
  return next;
}

/** Fills the rows of a run of records, and begins the next run. */
function fillRows(sheet: Sheet, { cells, positions }: Plan, view: DataView, run: Run): void {
  for (const cell of cells) fillCells(cell, view, run, sheet.row);
  for (const position of positions) sheet.located ||= isAnywhere(position, view, run);
  sheet.row += run.count;
  run.count = 0;
}

function fillCells(cell: Cell, view: DataView, { places, count }: Run, row: number): void {
  const { column, scale, shift, type, offset, littleEndian } = cell;
  // Out of the loop, which runs a hundred thousand times a file.
  const { take } = type;
  for (let i = 0; i < count; i++) {
    const value = take(view, places[i]! + offset, littleEndian);
    // Where a record holds a field twice, its last valid value stands.
    if (isNumber(value, type)) column[row + i] = value / scale + shift;
  }
}

function isAnywhere(stored: Stored, view: DataView, { places, count }: Run): boolean {
  for (let i = 0; i < count; i++) if (!Number.isNaN(numberAt(stored, view, places[i]!))) return true;
  return false;
}

function planOf(definition: Definition, described: ReadonlyMap<number, DeveloperField>, sheet: Sheet): Plan {
  const plan: Plan = { time: timeIn(definition), cells: [], positions: [] };
  if (definition.kind === kinds.record) {
    planFields(plan, definition, sheet);
    planDeveloperFields(plan, definition, described, sheet);
  }
  return plan;
}

/** Every message that has a time has it in the same field. */
function timeIn({ fields, littleEndian }: Definition): Stored | null {
  const field = fields.findLast((one) => recordFieldName(one) === 'timestamp');
  const type = field === undefined ? null : storedType('timestamp', field);
  return field === undefined || type === null ? null : { type, offset: field.offset, littleEndian };
}

function planFields({ cells, positions }: Plan, { fields, littleEndian }: Definition, sheet: Sheet): void {
  for (const field of fields) {
    const name = recordFieldName(field);
    if (name === undefined) continue;
    if (name === 'power') sheet.powerTypes.add(field.baseType);
    const type = storedType(name, field);
    if (type === null) continue;
    const place = { type, offset: field.offset, littleEndian };
    const { scale, shift } = recordFields[name];
    if (name === 'position_lat' || name === 'position_long') positions.push(place);
    else cells.push({ ...place, column: columnOf(sheet, name), scale, shift });
  }
}

function planDeveloperFields(
  { cells }: Plan,
  { developerFields, littleEndian }: Definition,
  described: ReadonlyMap<number, DeveloperField>,
  sheet: Sheet,
): void {
  for (const place of developerFields) {
    const field = described.get(keyOf(place));
    if (field === undefined || field.type?.size !== place.size || !isMeter(field)) continue;
    const { type, scale, shift } = field;
    cells.push({
      type,
      offset: place.offset,
      littleEndian,
      column: meterOf(sheet, field).power,
      scale,
      shift,
    });
  }
}

const isMeter = ({ name, units }: DeveloperField) => isMeterName(name, units);

function columnOf({ columns, length }: Sheet, name: RecordFieldName): Float64Array {
  const column = columns.get(name) ?? empty(length);
  columns.set(name, column);
  return column;
}

function meterOf({ meters, length }: Sheet, { key, name }: DeveloperField): ExtraMeter {
  const identity = `${key} ${name}`;
  const known = meters.get(identity);
  if (known !== undefined) return known;
  if (meters.size === limits.fitMeters) throw tooManyMeters();
  const meter = { name, power: empty(length) };
  meters.set(identity, meter);
  return meter;
}

function tooManyMeters(): Problem {
  return new Problem({
    code: 'format-limits',
    what: `the file describes more than ${limits.fitMeters} added fields of power`,
    hint: 'Hand in the file as the head unit wrote it',
  });
}

function empty(length: number): Float64Array {
  return new Float64Array(length).fill(Number.NaN);
}
