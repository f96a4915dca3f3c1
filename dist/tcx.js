import { Tn as shortName, a as indoorsOf, c as parseClock, i as stated, n as readMarkup, o as sportOf, r as combineTotals, t as Trackpoints, u as decimal, wn as decodeText } from "./program.js";
// src/read/xml/laps.ts
/** Elements of a TCX lap beside its track, and the total that each states. HeartRate elements hold a "Value". */
const totalOf = /* @__PURE__ */ new Map([
	["totaltimeseconds", "timerS"],
	["distancemeters", "distanceM"],
	["averageheartratebpm", "meanHeartRate"],
	["maximumheartratebpm", "maxHeartRate"],
	["cadence", "meanCadence"],
	["avgwatts", "meanPower"],
	["maxwatts", "maxPower"]
]);
/** Collects the laps of a TCX activity, one after another. Times are clock times, s. */
var Laps = class {
	#whole = [];
	#open = null;
	/** Whether a lap is open. */
	get open() {
		return this.#open !== null;
	}
	begin(from) {
		this.#open = {
			from,
			totals: {},
			tracks: 0
		};
	}
	/** A track begins. @returns whether the open lap has one already */
	track() {
		return this.#open !== null && this.#open.tracks++ > 0;
	}
	/** An element of the open lap beside its tracks. The first value of a total counts. */
	value(name, text, parent) {
		const total = totalOf.get(name === "value" ? parent : name);
		if (this.#open !== null && total !== void 0 && text !== "") this.#open.totals[total] ??= decimal(text);
	}
	/** @param to time of the last trackpoint */
	end(to) {
		if (this.#open !== null) this.#whole.push({
			from: this.#open.from,
			to,
			totals: stated(this.#open.totals)
		});
		this.#open = null;
	}
	/** The laps that go on for some time, each with the mean power that it states, W. */
	laps() {
		return this.#whole.flatMap(({ from, to, totals: { meanPower } }) => {
			if (!(to > from)) return [];
			return [meanPower === void 0 ? {
				from,
				to
			} : {
				from,
				to,
				meanPower
			}];
		});
	}
	/** What all laps state together. */
	totals() {
		return combineTotals(this.#whole.map(({ totals }) => totals));
	}
};
// src/read/xml/tcx.ts
/**
* Reads a TCX activity. Values count only inside a Trackpoint: laps carry averages under the same names. The
* laps' own totals become the file's totals. Times without a zone are read as UTC. A second Track in one lap
* means that recording was interrupted: the time between them is a pause.
*
* @throws Problem `format-limits` when it is nested too deep.
*/
function readTcx(bytes) {
	const points = new Trackpoints();
	const laps = new Laps();
	const creator = {};
	let sport = null;
	let activities = 0;
	let inActivity = false;
	const fault = readMarkup(decodeText(bytes), {
		started: () => points.count > 0,
		open(name, attributes) {
			if (name === "activity") {
				activities++;
				inActivity = true;
				sport ??= shortName(attributes.Sport);
			} else if (!inActivity) return;
			else if (name === "lap") {
				laps.end(points.lastTime);
				laps.begin(parseClock(attributes.StartTime ?? "")?.seconds ?? NaN);
			} else if (name === "track") {
				if (laps.track()) points.interrupt();
			} else if (name === "trackpoint") points.begin(false);
		},
		close(name, text, parent) {
			if (name === "trackpoint" && points.open) points.end();
			else if (points.open) points.value(name, text, parent);
			else if (name === "lap") laps.end(points.lastTime);
			else if (laps.open) laps.value(name, text, parent);
			else if (name === "activity") inActivity = false;
			else if (parent === "creator") creator[name] = shortName(text);
		}
	});
	laps.end(points.lastTime);
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
		pauses: points.pauses,
		laps: laps.laps(),
		totals: laps.totals(),
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
export { readTcx };
