import { a as indoorsOf, c as parseClock, cn as decodeText, i as stated, ln as shortName, n as readMarkup, o as sportOf, r as combineTotals, t as Trackpoints, u as decimal } from "./program.js";
// src/read/xml/tcx.ts
/** Elements of a lap beside its track, and the total that each states. HeartRate elements hold a "Value". */
const totalOf = /* @__PURE__ */ new Map([
	["totaltimeseconds", "timerS"],
	["distancemeters", "distanceM"],
	["averageheartratebpm", "meanHeartRate"],
	["maximumheartratebpm", "maxHeartRate"],
	["cadence", "meanCadence"],
	["avgwatts", "meanPower"],
	["maxwatts", "maxPower"]
]);
/**
* Reads a TCX activity. Values count only inside a Trackpoint: laps carry averages under the same names. The
* laps' own totals become the file's totals. Times without a zone are read as UTC. A second Track in one lap
* means that recording was interrupted: the time between them is a pause.
*
* @throws Problem `format-limits` when it is nested too deep.
*/
function readTcx(bytes) {
	const points = new Trackpoints();
	const laps = [];
	const pauses = [];
	const creator = {};
	let sport = null;
	let activities = 0;
	let inActivity = false;
	let lap = null;
	let trackEnd = NaN;
	let afterBreak = false;
	const endLap = () => {
		if (lap === null) return;
		laps.push({
			from: lap.from,
			to: points.lastTime,
			totals: stated(lap.totals)
		});
		lap = null;
	};
	const lapValue = (name, text, parent) => {
		const total = totalOf.get(name === "value" ? parent : name);
		if (total !== void 0 && text !== "") lap.totals[total] ??= decimal(text);
	};
	const fault = readMarkup(decodeText(bytes), {
		started: () => points.count > 0,
		open(name, attributes) {
			if (name === "activity") {
				activities++;
				inActivity = true;
				sport ??= shortName(attributes.Sport);
			} else if (!inActivity) return;
			else if (name === "lap") {
				endLap();
				lap = {
					from: parseClock(attributes.StartTime ?? "")?.seconds ?? NaN,
					totals: {},
					tracks: 0
				};
			} else if (name === "track") {
				afterBreak = lap !== null && lap.tracks++ > 0 && points.count > 0;
				trackEnd = points.lastTime;
			} else if (name === "trackpoint") points.begin(false);
		},
		close(name, text, parent) {
			if (name === "trackpoint" && points.open) {
				points.end();
				const next = points.lastTime;
				if (afterBreak && next > trackEnd + 1) pauses.push([trackEnd + 1, next]);
				afterBreak = false;
			} else if (points.open) points.value(name, text, parent);
			else if (name === "lap") endLap();
			else if (lap !== null) lapValue(name, text, parent);
			else if (name === "activity") inActivity = false;
			else if (parent === "creator") creator[name] = shortName(text);
		}
	});
	endLap();
	const { defects, ...columns } = points.assemble();
	return {
		...columns,
		sport: sportOf(sport),
		indoors: indoorsOf(sport, points.hasPositions),
		device: {
			maker: null,
			product: creator.name ?? null,
			serial: creator.unitid ?? null
		},
		balanceSide: null,
		pauses,
		laps: laps.flatMap(asLap),
		totals: combineTotals(laps.map(({ totals }) => totals)),
		defects: [
			...fault === null ? [] : [{
				id: "markup-ends-early",
				values: { line: fault }
			}],
			...activities > 1 ? [{
				id: "several-sessions",
				values: { sessions: activities }
			}] : [],
			...defects
		]
	};
}
function asLap({ from, to, totals }) {
	if (!(to > from)) return [];
	return [totals.meanPower === void 0 ? {
		from,
		to
	} : {
		from,
		to,
		meanPower: totals.meanPower
	}];
}
export { readTcx };
