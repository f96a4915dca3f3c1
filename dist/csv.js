import { An as eachRow, Dn as firstColumns, En as findHeadings, Fn as Problem, Nn as limits, On as assumedUnits, Tn as shortName, Vn as day, c as parseClock, f as assemble, jn as tooMany, kn as conversionOf, l as timeSeconds, s as dateSeconds, u as decimal, wn as decodeText } from "./program.js";
// src/read/csv/numbers.ts
/** What programs write where they have no value. */
const missing = /* @__PURE__ */ new Set([...[
	"",
	"-",
	"--",
	"nan",
	"null",
	"na",
	"n/a",
	"#n/a",
	"none",
	"undefined",
	"inf",
	"-inf",
	"infinity"
]]);
function isMissing(cell) {
	return missing.has(cell.toLowerCase());
}
const withComma = /^[-+]?\d+,\d+$/;
const thousands = /^[-+]?\d{1,3},\d{3}$/;
/**
* The number in a cell; NaN when there is none. A decimal comma is read as such. In a table delimited by
* commas (`commaIsDecimal` false) a quoted "1,234" could mean a thousand as well: that one is not read.
*/
function cellNumber(cell, commaIsDecimal) {
	if (!withComma.test(cell)) return decimal(cell);
	return !commaIsDecimal && thousands.test(cell) ? NaN : decimal(cell.replace(",", "."));
}
// src/read/csv/times.ts
/** Numbers from here on are seconds since 1970, not since a start (1973); from the second on, milliseconds. */
const epochSeconds = 1e8;
const epochMilliseconds = 1e11;
const dottedDate = /^(\d{1,2})\.(\d{1,2})\.(\d{4})$/;
const isoDate = /^(\d{4})-(\d\d)-(\d\d)$/;
const clockTime = /^(?:(\d{1,3}):)?(\d{1,2}):(\d\d(?:[.,]\d{1,9})?)$/;
/**
* Finds out, on the first row of data, how the times are written: a column with date and time before one
* with an epoch, a date beside a time of day, elapsed time. Null when no time column of this row can be read.
*/
function timeReader({ meanings }, row) {
	const columns = meanings.flatMap((meaning, index) => meaning.kind === "time" ? [{
		index,
		scale: meaning.scale,
		cell: row[index] ?? ""
	}] : []);
	const stamped = columns.find(({ cell }) => stamp(cell) !== null);
	if (stamped !== void 0) {
		const { index, cell } = stamped;
		return {
			dated: true,
			zoned: stamp(cell).zoned,
			read: (cells) => stamp(cells[index])?.seconds ?? NaN
		};
	}
	const number = ({ cell }) => cellNumber(cell, true);
	const epoch = columns.find((column) => number(column) >= epochSeconds);
	if (epoch !== void 0) {
		const scale = number(epoch) >= epochMilliseconds ? .001 : 1;
		return {
			dated: true,
			zoned: true,
			read: (cells) => cellNumber(cells[epoch.index] ?? "", true) * scale
		};
	}
	const date = columns.find(({ cell }) => !Number.isNaN(midnight(cell)));
	const clock = columns.find(({ cell }) => !Number.isNaN(timeOfDay(cell)));
	if (date !== void 0 && clock !== void 0) {
		const read = (cells) => midnight(cells[date.index]) + timeOfDay(cells[clock.index]);
		return {
			dated: true,
			zoned: false,
			read
		};
	}
	const elapsed = columns.find((column) => !Number.isNaN(number(column)));
	if (elapsed !== void 0) {
		const { index, scale } = elapsed;
		return {
			dated: false,
			zoned: false,
			read: (cells) => cellNumber(cells[index] ?? "", true) * scale
		};
	}
	return clock === void 0 ? null : {
		dated: false,
		zoned: false,
		read: pastMidnight(clock.index)
	};
}
/** Date and time in one cell: ISO 8601, or day.month.year. Month/day/year is not read: it is also day/month. */
function stamp(cell = "") {
	const iso = parseClock(cell);
	if (iso !== null) return iso;
	const [date, time, ...more] = cell.split(/,?\s+/);
	if (time === void 0 || more.length > 0 || !dottedDate.test(date)) return null;
	const seconds = midnight(date) + timeOfDay(time);
	return Number.isNaN(seconds) ? null : {
		seconds,
		zoned: false
	};
}
function midnight(cell = "") {
	const iso = isoDate.exec(cell);
	if (iso !== null) return dateSeconds(Number(iso[1]), Number(iso[2]), Number(iso[3]));
	const dotted = dottedDate.exec(cell);
	return dotted === null ? NaN : dateSeconds(Number(dotted[3]), Number(dotted[2]), Number(dotted[1]));
}
/** "1:02:03.5", "02:03": seconds since midnight or since the start. */
function timeOfDay(cell = "") {
	const match = clockTime.exec(cell);
	if (match === null) return NaN;
	const [, hours = "0", minutes, seconds] = match;
	const rest = timeSeconds(0, Number(minutes), Number(seconds.replace(",", ".")));
	return Number(hours) * 3600 + rest;
}
/** A time of day that falls back by more than half a day has passed midnight. */
function pastMidnight(index) {
	let days = 0;
	let before = NaN;
	return (cells) => {
		const time = timeOfDay(cells[index]);
		if (time < before - 43200) days++;
		if (!Number.isNaN(time)) before = time;
		return time + days * day;
	};
}
// src/read/csv/csv.ts
/**
* Reads a table with one row per record: comma, semicolon or tab; decimal point or comma; headings with or
* without units (a line of units below them is understood). Times without a zone are read as UTC; times
* without a date count from 1970. Both are said in a defect.
*
* @throws Problem `format-unknown`, with the columns found, when there is no time or no channel among them;
* `format-limits` when there is more of it than a recording has.
*/
function readCsv(bytes) {
	const text = decodeText(bytes);
	const headings = findHeadings(text);
	if (headings === null) throw noColumns(text);
	const columns = columnsIn(headings);
	const time = [];
	const commaIsDecimal = headings.delimiter !== ",";
	let clock = null;
	let hasPositions = false;
	let short = null;
	const unclosed = eachRow(text, headings.delimiter, (cells, line) => {
		if (line <= headings.line) return true;
		if (time.length === 0 && takeUnits(columns, cells)) return true;
		clock ??= timeReader(headings, cells);
		time.push(clock?.read(cells) ?? NaN);
		if (time.length * columns.length > limits.csvValues) throw tooMany("values", limits.csvValues);
		for (const column of columns) {
			const cell = cells[column.index] ?? "";
			const value = cellNumber(cell, commaIsDecimal);
			column.values.push(value);
			if (Number.isNaN(value) && !isMissing(cell)) column.unreadable++;
		}
		hasPositions ||= headings.meanings.some(({ kind }, i) => kind === "position" && !Number.isNaN(cellNumber(cells[i] ?? "", commaIsDecimal)));
		short = cells.length < headings.names.length ? line : null;
		return true;
	});
	const defects = [];
	const cut = unclosed ?? (text.endsWith("\n") ? null : short);
	if (cut !== null) defects.push({
		id: "markup-ends-early",
		values: { line: cut }
	});
	if (cut !== null && unclosed === null) for (const values of [time, ...columns.map((c) => c.values)]) values.pop();
	defects.push(...columns.flatMap(columnDefects));
	defects.push(...timeDefects(clock));
	const { defects: columnsDefects, ...assembled } = assemble(typed(time, columns));
	return {
		...assembled,
		sport: null,
		indoors: hasPositions ? false : null,
		device: {
			maker: null,
			product: null,
			serial: null
		},
		balanceSide: balanceSide(columns),
		pauses: [],
		laps: [],
		totals: {},
		defects: [...defects, ...columnsDefects]
	};
}
/** The first column of each channel, and every further one of power. */
function columnsIn({ names, meanings }) {
	const seen = /* @__PURE__ */ new Set();
	return meanings.flatMap((meaning, index) => {
		if (meaning.kind !== "channel" && meaning.kind !== "meter") return [];
		const found = meaning.kind === "channel" ? meaning.channel : null;
		const repeated = found !== null && seen.has(found);
		if (repeated && found !== "power") return [];
		if (found !== null) seen.add(found);
		return [{
			index,
			name: shortName(names[index]) ?? `column ${index + 1}`,
			channel: repeated ? null : found,
			conversion: meaning.kind === "channel" ? meaning.conversion : null,
			values: [],
			unreadable: 0
		}];
	});
}
/** Whether this row holds units instead of values; if so, the columns without one take theirs. */
function takeUnits(columns, cells) {
	const cellOf = ({ index }) => cells[index] ?? "";
	const unitOf = (column) => conversionOf(column.channel ?? "power", cellOf(column));
	const isUnit = (column) => cellOf(column) === "" || unitOf(column) !== void 0;
	if (!columns.every(isUnit) || columns.every((column) => cellOf(column) === "")) return false;
	for (const column of columns) column.conversion ??= unitOf(column) ?? null;
	return true;
}
function typed(time, columns) {
	const channels = {};
	const meters = [];
	for (const { name, channel, conversion, values } of columns) {
		const { scale, offset } = conversion ?? {
			scale: 1,
			offset: 0
		};
		const column = Float64Array.from(values, (value) => value * scale + offset);
		if (channel === null) meters.push({
			name,
			power: column
		});
		else channels[channel] = column;
	}
	return {
		time: Float64Array.from(time),
		channels,
		meters
	};
}
function columnDefects({ name, channel, conversion, unreadable, values }) {
	const unit = channel === null ? void 0 : assumedUnits[channel];
	const assumed = conversion === null && unit !== void 0 && values.some((value) => !Number.isNaN(value));
	return [...unreadable > 0 ? [{
		id: "unreadable-values",
		values: {
			count: unreadable,
			column: name
		}
	}] : [], ...assumed ? [{
		id: "unit-assumed",
		values: {
			column: name,
			unit
		}
	}] : []];
}
function timeDefects(clock) {
	if (clock === null || clock.dated && clock.zoned) return [];
	return [{
		id: clock.dated ? "zone-assumed" : "no-clock",
		values: {}
	}];
}
function balanceSide(columns) {
	const balance = columns.find(({ channel }) => channel === "balance");
	if (balance === void 0 || balance.values.every(Number.isNaN)) return null;
	return /left/i.test(balance.name) && !/right/i.test(balance.name) ? "left" : "unknown";
}
function noColumns(text) {
	const names = firstColumns(text).map((name) => shortName(name) ?? "(empty)");
	const shown = names.slice(0, limits.columnsNamed).join(", ");
	const more = names.length > limits.columnsNamed ? ` and ${names.length - limits.columnsNamed} more` : "";
	return new Problem({
		code: "format-unknown",
		what: `this table has no headings for a time and a channel; its columns are: ${shown}${more}`,
		hint: "Name the columns in the first line, for example: time,power (W),cadence (rpm),heart rate (bpm)"
	});
}
export { readCsv };
