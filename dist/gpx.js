import { Tn as shortName, a as indoorsOf, n as readMarkup, o as sportOf, t as Trackpoints, wn as decodeText } from "./program.js";
// src/read/xml/gpx.ts
/**
* Reads a GPX 1.0 or 1.1 track with what recorders put into its extensions. Times without a zone are UTC, as
* the schema says. A new track segment means that recording was interrupted (GPX 1.1 schema, trkseg): the
* time between two is a pause.
*
* @throws Problem `format-limits` when it is nested too deep.
*/
function readGpx(bytes) {
	const points = new Trackpoints();
	let creator = null;
	let type = null;
	const fault = readMarkup(decodeText(bytes), {
		started: () => points.count > 0,
		open(name, attributes) {
			if (name === "trkpt") points.begin("lat" in attributes || "lon" in attributes);
			else if (name === "trkseg") points.interrupt();
			else if (name === "gpx") creator = shortName(attributes.creator);
		},
		close(name, text, parent) {
			if (name === "trkpt") points.end();
			else if (points.open) points.value(name, text, parent);
			else if (name === "type" && parent === "trk") type ??= shortName(text);
		}
	});
	const { defects, ...columns } = points.assemble();
	return {
		...columns,
		sport: sportOf(type),
		indoors: indoorsOf(type, points.hasPositions),
		device: {
			maker: null,
			product: creator,
			serial: null
		},
		balanceSide: null,
		pauses: points.pauses,
		laps: [],
		totals: {},
		defects: fault === null ? defects : [{
			id: "markup-ends-early",
			values: { line: fault }
		}, ...defects]
	};
}
export { readGpx };
