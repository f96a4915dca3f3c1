#!/usr/bin/env node
import { $ as ruleFilesIn, $t as renderCharts, A as earlierGiven, B as decisionsFile, Bn as tool, Bt as renderHtml, Cn as openArchive, Ct as raceFrom, Dt as removeOthers, E as crossChecks, Et as namedAsWritten, Fn as Problem, Ft as readReport, Gn as CommanderError, Gt as sourceSaid, H as printDecisions, Hn as besideRules, Ht as ruleNumber, In as problemsIn, It as renderMarkdown, J as whyNoPath, Jt as mayRestOnMass, Kn as Option, Kt as renderCsv, Ln as sentence, Lt as renderLetter, M as writeEvent, Mt as reportFolder, N as writeViews, Nt as renderText, O as recordHead, Ot as reportFiles, Pt as redact, Q as remark, Qt as isChartName, R as togetherSaid, Rn as sha256, Rt as wrap, S as joinParts, Sn as isArchive, St as readText, Tt as makeFolder, U as viewOf, Ut as spreadSaid, V as decisionsFrom, Vt as ruleLimitSaid, W as withDecision, Wn as Command, Wt as falseAlarmSaid, X as many, Xt as canonical, Y as complain, Yt as sameJson, Z as painter, Zt as parseJson, _ as tell$1, _n as nearest, _t as statusOf, an as factNames, at as historyGiven, bn as checksum, bt as widthOf, cn as counted, ct as profileGiven, dn as unitMark, dt as keepApart, en as gradeWord, et as rulesGiven, fn as whyUnwritable, ft as each, g as eventStatus, gn as readFileSafely, gt as status, h as eventCommand, hn as isFolder, in as plain, it as historyFrom, j as recordIn, jt as recordFile, k as decisionsIn, kt as writtenInto, ln as duration, lt as completenessOf, m as ruleDifferences, mn as filesBelow, mt as today, nn as reachSaid, nt as shipped, on as clean, ot as historyRead, pn as writeWhole, pt as options, q as sameNumber, qt as compare, rn as unreadableSaid, rt as progressOn, sn as shorten, st as profileFrom, tn as missingSaid, tt as rulesRead, un as number, ut as printProfile, vn as limits, vt as asciiOnly, w as eventGiven, wt as riderFrom, xn as audit, xt as readNamed, y as tellGone, yt as coloured, z as caseReadme, zn as raisedLevels, zt as renderJson } from "./program.js";
import process from "node:process";
import path from "node:path";
import { cp, readdir } from "node:fs/promises";
// src/cli/facts.ts
/** Where facts that no file gave are said to stand. */
const onCommandLine = "options";
async function riderGiven(io, given) {
	const { value, inputs } = await fileGiven(io, given.rider, "rider", riderFrom);
	const named = (given.device ?? []).map(deviceFrom);
	const names = new Set(named.map((device) => device.name));
	const devices = [...(value.devices ?? []).filter((device) => !names.has(device.name)), ...named];
	return {
		facts: await changed(value, present({
			massKg: given.mass,
			recordClass: given.class,
			devices: named.length > 0 ? devices : void 0
		}), riderFrom),
		inputs
	};
}
async function raceGiven(io, given) {
	const { value, inputs } = await fileGiven(io, given.race, "race", raceFrom);
	const { start, finish, kind, require: required } = given;
	return {
		facts: await changed(value, present({
			start,
			finish,
			kind,
			required
		}), raceFrom),
		inputs
	};
}
async function fileGiven(io, file, role, check) {
	if (file === void 0) return {
		value: {},
		inputs: []
	};
	const { text, input } = await readText(io, file, role);
	return {
		value: await check(parseJson(text, "facts-wrong", file), file),
		inputs: [input]
	};
}
/** Checked again only when an option changed something: the schema is not loaded for nothing. */
async function changed(value, changes, check) {
	if (Object.keys(changes).length === 0) return value;
	return check({
		...value,
		...changes
	}, onCommandLine);
}
function present(fields) {
	return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== void 0));
}
/** "primary=trainer,2,1.5": the last = parts, so that a file's name may hold one. */
function deviceFrom(text) {
	const match = /^(?<name>.+)=(?<place>[^=,]*),(?<sides>[^=,]*),(?<tolerance>[^=,]*)$/.exec(text);
	if (match?.groups === void 0) throw new Problem({
		code: "usage",
		what: `“${text}” does not describe a meter`,
		where: "--device",
		hint: "Give its recording, place, sides and tolerance in per cent, like primary=trainer,2,1.5"
	});
	const { name, place, sides, tolerance } = match.groups;
	if (!Number.isFinite(Number(tolerance)) || tolerance.trim() === "") throw new Problem({
		code: "usage",
		what: `“${tolerance}” is no number of per cent`,
		where: "--device",
		hint: "Give the tolerance as the maker states it, like 1.5"
	});
	return {
		name,
		place,
		sides: Number(sides),
		tolerancePercent: Number(tolerance)
	};
}
// src/cli/forms.ts
/** Bytes of a report in Markdown: what fits into one comment where code is hosted. */
const commentBytes = 6e4;
/** Columns of a text report in a file. */
const fileColumns = 80;
const forms = [
	"text",
	"json",
	"html",
	"markdown",
	"csv"
];
const endings = {
	".txt": "text",
	".json": "json",
	".html": "html",
	".htm": "html",
	".md": "markdown",
	".csv": "csv"
};
/** The form that a file's ending chooses. */
function formOf(file) {
	const ending = path.extname(file).toLowerCase();
	const form = Object.hasOwn(endings, ending) ? endings[ending] : void 0;
	if (form !== void 0) return form;
	throw new Problem({
		code: "usage",
		what: "the ending of the file must say which form the report takes",
		where: `--out ${file}`,
		hint: `End it with one of ${Object.keys(endings).join(", ")}`
	});
}
/** The report in a form, for a file. */
async function render(report, form) {
	switch (form) {
		case "text": return renderText(report, {
			width: fileColumns,
			colour: false,
			ascii: false
		});
		case "json": return renderJson(report);
		case "html": return renderHtml(report);
		case "markdown": return renderMarkdown(report, { limit: commentBytes });
		case "csv": return renderCsv(report);
	}
}
/** The report in a form, for standard output: text fits itself to the terminal. */
async function renderTo({ stdout, env }, report, form) {
	if (form !== "text") return render(report, form);
	return renderText(report, {
		width: widthOf(stdout),
		colour: coloured(stdout, env),
		ascii: asciiOnly(stdout, env)
	});
}
// src/cli/letter.ts
const letterOptions = () => [
	new Option("--letter <file>", "write the draft of a letter to the rider, in plain words, to a text file"),
	new Option("--to <name>", "whom the letter greets"),
	new Option("--organiser <name>", "who signs the letter"),
	new Option("--event <name>", "how the letter calls the event"),
	new Option("--due <day>", "until when the letter asks for an answer, as it is to be said"),
	new Option("--reply <address>", "where an answer to the letter goes"),
	new Option("--note <text>", "words of the organiser's own, before the letter's closing")
];
/** The letter's frame. A name is kept out of what is redacted. @throws Problem `usage` */
function frameGiven(given, redacted) {
	const { letter, to, organiser, event, due: by, reply, note } = given;
	const frame = Object.fromEntries(Object.entries({
		rider: redacted ? void 0 : to,
		organiser,
		event,
		by,
		reply,
		note
	}).filter(([, value]) => value !== void 0));
	if (letter === void 0 && (to !== void 0 || Object.keys(frame).length > 0)) throw new Problem({
		code: "usage",
		what: "there are words for a letter, and no file to write it to",
		where: "--letter",
		hint: "Name one, like --letter letter.txt"
	});
	return frame;
}
// src/cli/audit.ts
/** Pixels that a chart is wide in a file of its own. */
const chartWidth = 760;
const examples$6 = `
Examples:
  $ wattassay audit trainer.fit
  $ wattassay audit trainer.fit --second pedals.fit --out report.html
  $ wattassay audit trainer.fit --second pedals.fit --mass 68 --class women \\
      --device primary=trainer,2,1.5 --device second=pedal,2,1 \\
      --start 2026-03-14T19:00:00+01:00 --finish 2026-03-14T20:04:00+01:00
  $ wattassay audit trainer.fit --history rides/ --rider rider.json --race race.json
  $ wattassay audit trainer.fit --second pedals.fit --charts charts/ --letter letter.txt \\
      --to "R. Rider" --organiser "The jury" --event "Round 3" --due "Friday, 20 March" --reply jury@example.org
  $ wattassay audit trainer.fit --rules our-rules/ --redact --format json --fail-on never

Recordings may be FIT, TCX, GPX or CSV, also gzipped or alone in a ZIP.

Exit status: 0 below --fail-on; 1 the submission reached it, or is incomplete; 2 could not run.
`;
/** `wattassay audit PRIMARY`. `done` is told the exit status. */
function auditCommand(io, done) {
	const command = new Command("audit").summary("audit one submission: a recording, and what there is beside it").description("Audits one submission and reports what needs an explanation, with the evidence.").argument("<primary>", "the recording that the result rests on").addOption(new Option("--second <file>", "the same ride by another meter (repeatable)").argParser(each)).addOption(new Option("--history <path>", "the rider's earlier rides: a folder or ZIP of recordings, or a profile")).addOption(options.rider()).addOption(options.mass()).addOption(options.class()).addOption(options.device()).addOption(options.race()).addOption(options.start()).addOption(options.finish()).addOption(options.kind()).addOption(options.require()).addOption(options.rules()).addOption(new Option("--format <form>", "what to print; text unless --out is given").choices(forms)).addOption(new Option("--out <file>", "write the report to a file; .txt, .json, .html, .md or .csv chooses the form (repeatable)").argParser(each)).addOption(new Option("--charts <folder>", "write every chart as an SVG file into a folder")).addOption(options.failOn()).addOption(options.redact()).addHelpText("after", examples$6).action(async (primary, given) => done(await run$6(io, primary, given)));
	for (const option of letterOptions()) command.addOption(option);
	return command;
}
async function run$6(io, primary, given) {
	const outs = (given.out ?? []).map((file) => ({
		file,
		form: formOf(file)
	}));
	const frame = frameGiven(given, given.redact === true);
	const sources = [
		primary,
		...given.second ?? [],
		given.rider,
		given.race,
		given.history === void 0 ? void 0 : historyRead(given.history),
		given.rules === void 0 ? void 0 : rulesRead(given.rules)
	];
	await keepApart(io, sources, [...outs.map(({ file }) => ({
		option: "--out",
		file
	})), ...given.letter === void 0 ? [] : [{
		option: "--letter",
		file: given.letter
	}]], given.charts === void 0 ? [] : [{
		option: "--charts",
		folder: given.charts,
		gives: isChartName
	}]);
	const progress = progressOn(io);
	try {
		const rules = await rulesGiven(io, given.rules);
		const submission = await submissionGiven(io, primary, given, (what) => progress.now(what));
		const inputs = [...submission.otherInputs, ...rules.inputs];
		const report = await audit({
			...submission,
			otherInputs: inputs
		}, rules.set, (stage) => progress.now(stage));
		progress.clear();
		for (const device of withoutMeter(report, given)) remark(io, `--device ${device}: no recording here is called so, and nothing rests on it`);
		await tell(io, given.redact ? redact(report) : report, given, outs, frame);
		return statusOf(report, given.failOn);
	} finally {
		progress.clear();
	}
}
async function submissionGiven(io, primary, given, onFile) {
	const rider = await riderGiven(io, given);
	const race = await raceGiven(io, given);
	const { devices } = rider.facts;
	const history = given.history === void 0 ? null : await historyGiven(io, given.history, {
		...devices === void 0 ? {} : { devices },
		onFile,
		onTrouble: (said) => given.redact || remark(io, `left out: ${said}`)
	});
	return {
		primary: await readNamed(io, primary, limits.recordingBytes),
		...await secondsGiven(io, given.second ?? []),
		rider: rider.facts,
		race: race.facts,
		profile: history?.profile ?? null,
		otherInputs: [
			...rider.inputs,
			...race.inputs,
			...history?.inputs ?? []
		]
	};
}
/** A second that cannot be opened makes the submission incomplete; it does not stop the audit. */
async function secondsGiven(io, files) {
	const seconds = [];
	const unopened = [];
	for (const file of files) {
		const name = path.basename(file);
		try {
			seconds.push(await readNamed(io, file, limits.recordingBytes, name));
		} catch (error) {
			if (!(error instanceof Problem)) throw error;
			unopened.push({
				name,
				why: sentence(error)
			});
		}
	}
	return {
		seconds,
		unopened
	};
}
/** Files first: a report that could not be written must not look as if it had been. */
async function tell(io, report, { format, letter, charts }, outs, frame) {
	const write = async (file, text) => {
		await writeWhole(path.resolve(io.cwd, file), text);
		remark(io, `written: ${file}`);
	};
	for (const { file, form } of outs) await write(file, await render(report, form));
	if (letter !== void 0) await write(letter, renderLetter(report, frame));
	if (charts !== void 0) await writeCharts(io, report, charts);
	const form = format ?? (outs.length === 0 ? "text" : null);
	if (form !== null) io.stdout.write(await renderTo(io, report, form));
	else remark(io, inShort(report));
}
/** What is told of a report that went to files alone. */
function inShort(report) {
	const said = [
		reachSaid(report),
		unreadableSaid(report),
		missingSaid(report)
	];
	return [`${gradeWord(report.grade)}.`, ...said.filter((part) => part !== null)].join(" ");
}
/**
* Meters declared by option that no recording goes with: most likely a name is misspelt. Where a recording could
* not be read, its meter may be one of them, and an earlier ride's may be where there are any: nothing is said then.
*/
function withoutMeter({ submission }, { device: devices = [], history }) {
	const { primary, seconds, unreadable } = submission;
	if (unreadable.length > 0 || history !== void 0) return [];
	const declared = [primary, ...seconds].flatMap((one) => one.declared?.name ?? []);
	return devices.filter((device) => !declared.includes(device.slice(0, device.lastIndexOf("="))));
}
async function writeCharts(io, report, folder) {
	const place = path.resolve(io.cwd, folder);
	await makeFolder(place, folder);
	const files = renderCharts(report, { width: chartWidth });
	for (const { name, svg } of files) await writeWhole(path.join(place, name), svg);
	remark(io, `written: ${many(files.length, "chart")} into ${folder}`);
}
// src/cli/case.ts
const examples$5 = `
Examples:
  $ wattassay case round-3.event.json 14 --from audited --out case-14

The folder holds what both sides argue from: the report, the letter, the recordings as handed in with facts and
earlier rides, the event's own rules, what only the event as a whole shows, every checksum, and what was asked,
answered and decided; README.txt says what is what, and how the report is made again from it. It names no other
rider. It holds health data: send it to nobody but the rider and those who decide.
`;
/** `wattassay case EVENT RIDER`. `done` is told the exit status. */
function caseCommand(io, done) {
	return new Command("case").summary("pack one rider's case into a folder for both sides").description("Packs one rider's report, recordings, checksums, letter and decisions into one folder for both sides.").argument("<event>", "the event file or folder").argument("<rider>", "the rider's number").requiredOption("--from <folder>", "the audited run").requiredOption("--out <folder>", "the folder to pack into").addOption(options.rules()).addHelpText("after", examples$5).action(async (named, rider, given) => done(await run$5(io, named, rider, given)));
}
async function run$5(io, named, rider, given) {
	const event = await eventGiven(io, named, given);
	const record = await recordIn(io, given.from);
	const entry = event.plan.entries.find(({ number }) => sameNumber(number) === sameNumber(rider));
	const row = record.rows.find(({ number }) => number === entry?.number);
	if (entry === void 0 || row === void 0) throw new Problem({
		code: "usage",
		what: `that run holds no rider “${rider}”`,
		where: given.from,
		hint: "Run wattassay event again, or look at the number"
	});
	const decisions = (await decisionsIn(event.files.root)).filter((one) => isAbout(one, entry, event));
	const rules = await rulesOf$1(io, event, entry, given.rules);
	const packed = [
		...await reportsOf(io, given.from, row),
		...await recordingsOf(event, entry),
		...await restOf(event, entry),
		...togetherIn(record, row),
		...rules.files,
		fileOf(decisionsFile, printDecisions(decisions))
	];
	refuseOthers(packed, row);
	const names = packed.map(({ name }) => name);
	const about = {
		number: row.number,
		event: record.event.name,
		files: names,
		rules: rules.folder
	};
	const files = [fileOf("README.txt", caseReadme(about)), ...packed];
	const lines = files.map(({ name, bytes }) => `${checksum(bytes)}  ${name}`);
	const folder = path.resolve(io.cwd, given.out);
	await keepApart(io, [path.join(event.files.root, decisionsFile)], names.map((name) => ({
		option: "--out",
		file: path.join(folder, ...name.split("/"))
	})));
	for (const { name, bytes } of files) {
		const file = path.join(folder, ...name.split("/"));
		await makeFolder(path.dirname(file), path.dirname(file));
		await writeWhole(file, bytes);
	}
	await writeWhole(path.join(folder, "SHA256SUMS"), `${lines.sort().join("\n")}\n`);
	io.stdout.write(`${files.length} files in ${given.out}\n`);
	if (row.report === null) remark(io, "there is no report: this submission could not be audited");
	return status.done;
}
function isAbout({ rider, event }, { number }, { plan }) {
	return rider === number && (event ?? plan.name) === plan.name;
}
async function reportsOf(io, from, { number, report }) {
	if (report === null) return [];
	const files = [];
	for (const name of reportFiles) {
		const shown = path.join(from, ...reportFolder(number).split("/"), name);
		files.push({
			name,
			bytes: (await readFileSafely(path.resolve(io.cwd, shown), {
				most: limits.reportBytes,
				shown
			})).bytes
		});
	}
	return files;
}
/** Recordings under the names by which they were handed in, apart where two bear one name. */
async function recordingsOf({ files }, { primary, seconds }) {
	const found = [];
	for (const [index, place] of [primary, ...seconds].entries()) {
		if (place === null) continue;
		const role = index === 0 ? "primary" : index === 1 ? "second" : `second-${index}`;
		const { name, bytes } = await files.read(place, limits.recordingBytes);
		found.push({
			name: `recordings/${role}/${name}`,
			bytes
		});
	}
	return found;
}
/** What else the rider handed in and the report argues from: facts and earlier rides. */
async function restOf({ files }, { factInputs, history }) {
	const found = [];
	for (const { name } of factInputs) {
		const { bytes } = await files.read(name, limits.factsBytes);
		found.push({
			name: `facts/${name.split("/").at(-1)}`,
			bytes
		});
	}
	if (history === null) return found;
	for (const [index, place] of (await files.pastFiles(history)).entries()) {
		const { name, bytes } = await files.read(place, limits.archiveBytes);
		const below = place === history ? name : place.slice(history.length + 1);
		found.push({
			name: `history/${isPlain(below) ? below : `file-${index + 1}`}`,
			bytes
		});
	}
	return found;
}
/** Members of a ZIP bear any name: one that would lead elsewhere, or that no disk takes, is not used. */
const isPlain = (name) => whyNoPath(name) === null && !/[\p{Cc}:*?"<>|]/u.test(name);
/** What only the event as a whole shows about the rider. */
function togetherIn(record, { number }) {
	const lines = togetherSaid(record, number).map(plain);
	if (lines.length === 0) return [];
	return [fileOf("seen-together.txt", `${lines.join("\n")}\n`)];
}
const fileOf = (name, text) => ({
	name,
	bytes: new TextEncoder().encode(text)
});
/** The event's own rules, in a folder of the name that the report states; none where it has none. */
async function rulesOf$1(io, { files, terms }, { rules }, option) {
	const named = rules ?? option;
	if (named === void 0) return {
		folder: null,
		files: []
	};
	const cwd = rules === null ? terms : files.terms;
	const found = await ruleFilesIn({
		...io,
		cwd
	}, named);
	const folder = `rules/${path.basename(path.resolve(cwd, named))}`;
	return {
		folder,
		files: found.files.map(({ name, text }) => fileOf(`${folder}/${name}`, text))
	};
}
/** A case argues from the files that were audited: others under the same names would be another case. */
function refuseOthers(files, { recordings }) {
	const known = new Set(recordings.map((one) => one.sha256));
	if (known.size === 0) return;
	const now = /* @__PURE__ */ new Set();
	for (const { name, bytes } of files) if (name.startsWith("recordings/")) now.add(checksum(bytes));
	if ([...known].filter((digest) => !now.has(digest)).length === 0) return;
	throw new Problem({
		code: "report-wrong",
		what: "the recordings are no longer the ones that were audited",
		hint: "Run wattassay event again, then pack the case"
	});
}
// src/cli/decide.ts
const examples$4 = `
Examples:
  $ wattassay decide round-3.event.json 14 late-drift --asked 2026-03-15 --due 2026-03-18
  $ wattassay decide round-3.event.json 14 late-drift --answered 2026-03-16 --answer "No spin-down before the race."
  $ wattassay decide round-3.event.json 14 late-drift --decision stands --by "chief commissaire" \\
      --why "Judged by the pedals, the place is the same." --out audited
  $ wattassay decide round-3.event.json 17 sprint-overshoot --decision explained --by jury \\
      --why "The trainer is known for it; pedals decide until it is repaired." --until 2026-09-30

What the event requires and does not have is asked about as “missing”, a device that recorded for several riders at
the same time as “shared-device”. The record is decisions.json beside the event file; it may be edited by hand too.
It changes no measurement and no grade. With --out the overview and summaries of that run are written anew.
`;
const fields = [
	"asked",
	"due",
	"answered",
	"answer",
	"decision",
	"by",
	"decidedOn",
	"why",
	"appeal",
	"until"
];
/** `wattassay decide EVENT RIDER RULE`. `done` is told the exit status. */
function decideCommand(io, done) {
	return new Command("decide").summary("keep on record what was asked, answered and decided").description("Keeps on record what was asked about a finding, what was answered, and what was decided.").argument("<event>", "the event file or folder").argument("<rider>", "the rider's number").argument("<rule>", "the rule whose finding it is about, “missing” or “shared-device”").addOption(options.day("--asked <day>", "when the question was sent, like 2026-03-15")).addOption(options.day("--due <day>", "when the answer is due")).addOption(options.day("--answered <day>", "when the answer came")).option("--answer <text>", "the answer in a few words").addOption(new Option("--decision <decision>", "what was decided").choices([
		"stands",
		"explained",
		"does not stand",
		"withdrawn"
	])).option("--by <role>", "who decided, by role and never by name").addOption(options.day("--decided-on <day>", "when it was decided")).option("--why <text>", "the reason").addOption(new Option("--appeal <state>", "an appeal").choices([
		"open",
		"upheld",
		"dismissed"
	])).addOption(options.day("--until <day>", "until when an explanation that was accepted is taken for granted")).addOption(options.rules()).option("--out <folder>", "an audited run whose overview is written anew").addOption(options.today()).addHelpText("after", examples$4).action(async (named, rider, rule, given) => done(await run$4(io, named, rider, rule, given)));
}
async function run$4(io, named, rider, rule, given) {
	const event = await eventGiven(io, named, given);
	const entry = event.plan.entries.find(({ number }) => sameNumber(number) === sameNumber(rider));
	if (entry === void 0) throw noRider(event, rider);
	refuseUnknownRule(event, rule);
	if (fields.every((name) => given[name] === void 0)) throw nothingToKeep();
	const { root } = event.files;
	const change = {
		rider: entry.number,
		rule,
		event: event.plan.name,
		...entry.id === null ? {} : { id: entry.id },
		...Object.fromEntries(fields.flatMap((name) => given[name] === void 0 ? [] : [[name, given[name]]]))
	};
	const decisions = withDecision(await decisionsIn(root), change);
	await decisionsFrom({ decisions }, decisionsFile);
	await writeWhole(path.join(root, decisionsFile), printDecisions(decisions));
	remark(io, `written: ${decisionsFile} beside the event`);
	if (given.out !== void 0) {
		const record = await recordIn(io, given.out);
		const seen = {
			decisions,
			before: null,
			today: given.today ?? today()
		};
		await writeViews(path.resolve(io.cwd, given.out), record, seen);
		remark(io, `written: ${path.join(given.out, "overview.html")}`);
		if (viewOf(record, decisions, null, seen.today).matters.get(entry.number)?.every((one) => one.rule !== rule)) remark(io, `note: that run has no open finding ${rule} for rider ${entry.number}`);
	}
	return status.done;
}
function nothingToKeep() {
	return new Problem({
		code: "usage",
		what: "nothing is said that could be kept on record",
		hint: "Say what was asked, answered or decided, like --asked 2026-03-15; --help lists it all"
	});
}
function noRider({ plan }, rider) {
	const near = nearest(rider, plan.entries.map(({ number }) => number));
	return new Problem({
		code: "usage",
		what: `no rider of this event bears the number “${rider}”`,
		hint: near === null ? "wattassay event --check says which riders there are" : `Did you mean ${near}?`
	});
}
function refuseUnknownRule({ sets }, rule) {
	const known = [...besideRules, ...new Set([...sets.values(), shipped].flatMap(({ rules }) => rules.map(({ id }) => id)))];
	if (known.includes(rule)) return;
	const near = nearest(rule, known);
	throw new Problem({
		code: "usage",
		what: `there is no rule “${rule}”`,
		hint: near === null ? "wattassay rules lists them" : `Did you mean “${near}”?`
	});
}
// src/cli/merge.ts
const examples$3 = `
Examples:
  $ wattassay merge round-3.event.json part-1 part-2 --out whole

Give the event, --rules and --redact as the parts were given them. What comes out is what one run over the whole
event writes, byte for byte. Parts that are missing, named twice or made otherwise are refused.

Exit status: 0 below --fail-on; 1 a submission reached it, or is incomplete; 2 the parts do not make a whole.
`;
/** `wattassay merge EVENT PART…`. `done` is told the exit status. */
function mergeCommand(io, done) {
	return new Command("merge").summary("put the parts of an event together").description("Puts together the parts of an event that `event --part` audited, on one machine or several.").argument("<event>", "the event file or folder, as the parts were given it").argument("<parts...>", "the folder of each part").requiredOption("--out <folder>", "where the overview, the record and the reports go").addOption(options.rules()).addOption(options.earlier()).addOption(options.since()).addOption(options.today()).addOption(options.failOn()).option("--redact", "the parts were audited with --redact").addHelpText("after", examples$3).action(async (named, parts, given) => done(await run$3(io, named, parts, given)));
}
async function run$3(io, named, parts, given) {
	await refusePart(io, named, parts);
	const event = await eventGiven(io, named, given);
	const records = parts.map((part) => path.join(part, recordFile));
	const sources = [
		event.place,
		...namedAsWritten(event.files.textsRead()),
		...given.earlier ?? [],
		...records
	];
	const outputs = writtenInto(given.out);
	await keepApart(io, sources, outputs);
	const earlier = await earlierGiven(io, given.earlier ?? [], outputs);
	const before = given.since === void 0 ? null : await recordIn(io, given.since);
	const decisions = await decisionsIn(event.files.root);
	const found = [];
	for (const where of parts) found.push({
		where,
		record: await recordIn(io, where)
	});
	const numbers = event.plan.entries.map(({ number }) => number);
	const rows = await joinParts(found, numbers, event.digest);
	const out = path.resolve(io.cwd, given.out);
	await makeFolder(out, given.out);
	for (const { where, record } of found) await copyReports(path.resolve(io.cwd, where), out, record.rows);
	const record = {
		eventVersion: 1,
		...recordHead(event.plan, event.sets),
		plan: event.digest,
		part: null,
		selected: null,
		rows,
		unmatched: given.redact ? [] : event.plan.unmatched,
		crossChecks: crossChecks(event.plan, rows, event.sets, earlier)
	};
	await writeEvent(out, record, {
		decisions,
		before,
		today: given.today ?? today()
	});
	tellGone(io, await removeOthers(out, numbers));
	tell$1(io, record, before, path.join(given.out, "overview.html"));
	return eventStatus(record, given.failOn);
}
/** Also what a part keeps of submissions that could not be audited, so that the next run finds all of it. */
async function copyReports(from, to, rows) {
	for (const { number, report } of rows) {
		const parts = reportFolder(number).split("/");
		try {
			await cp(path.join(from, ...parts), path.join(to, ...parts), { recursive: true });
		} catch (error) {
			const { code } = error;
			if (code !== "ENOENT" || report !== null) throw whyUnwritable(error, path.join(to, ...parts));
		}
	}
}
/** The event is named first: whoever leaves it out names a part in its place. */
async function refusePart(io, named, parts) {
	const record = await recordIn(io, named).catch(() => null);
	if (record === null || record.part === null || parts.length >= record.part.of) return;
	throw new Problem({
		code: "usage",
		what: "this is a part, and the event is wanted first",
		where: named,
		hint: `Name the event file or folder before the parts: wattassay merge EVENT ${[named, ...parts].join(" ")} --out FOLDER`
	});
}
// src/cli/new-files.ts
/** The files of a results repository, by path. Texts for organisers and riders; nothing in them is law. */
function repositoryFiles(name) {
	return {
		"README.md": readme(name),
		".gitignore": ignored,
		".gitattributes": attributes,
		"rules/grades.json": grades,
		"rules/README.md": rules,
		"events/round-1/round-1.event.json": eventFile,
		"events/round-1/submissions/README.md": submissions,
		"profiles/README.md": profiles,
		"riders/how-to-hand-in.md": handIn,
		"riders/consent-and-your-rights.md": consent,
		".github/workflows/audit.yml": workflow,
		".github/workflows/pull-request.yml": proposals
	};
}
/** Actions of the workflows that are laid out, each by the digest of the release that was looked at. */
const actions = {
	checkout: "actions/checkout@3d3c42e5aac5ba805825da76410c181273ba90b1 # v7.0.1",
	upload: "actions/upload-artifact@bbbca2ddaa5d8feaa63e36b76fdaad77386f024f # v7.0.0",
	node: "actions/setup-node@820762786026740c76f36085b0efc47a31fe5020 # v7.0.0",
	download: "actions/download-artifact@3e5f45b2cfb9172054b4087a40e8e0b5a5461e7c # v8.0.1"
};
const readme = (name) => `# ${name}

Results of our events, checked with [wattassay](https://github.com/OWNER/wattassay): recordings, what was asked and
answered, what was decided.

**Keep this repository private.** A recording holds where and when a person rides, often from the front door, and the
heart rate, which is health data. Committed to a public repository it is published for good: deleting it later removes
it neither from the history nor from the copies that others made. If this repository was ever public with a recording
in it, tell the riders.

## Where things are

| folder | what is in it |
| --- | --- |
| \`events/round-1/\` | an event: its file, the submissions, \`decisions.json\` |
| \`rules/\` | what we do differently from the shipped rules |
| \`profiles/\` | riders' earlier rides, compiled: bests, heart rate and mass, no traces |
| \`riders/\` | texts for riders: how to hand in, consent and rights |

## An evening

1. Put each rider's files into a folder that begins with the rider's number, or put the number first in the names:
   \`events/round-1/submissions/17/primary.fit\` and \`second.fit\`.
2. \`wattassay event events/round-1 --rules rules --check\` says what is missing or doubtful, with the fix, and audits nothing.
3. \`wattassay event events/round-1 --rules rules --out audited/round-1\` audits. Open
   \`audited/round-1/overview.html\`.
4. Ask: \`reports/rider-17/letter.txt\` is a draft of the letter to rider 17. Keep it on record:
   \`wattassay decide events/round-1 17 late-drift --asked 2026-03-15 --due 2026-03-18\`
5. When the answer is there, people decide; \`wattassay decide\` keeps what, by which role, and why. Step 3 once more
   takes a moment, and puts answers that are overdue first.
6. For a jury or an appeal: \`wattassay case events/round-1 17 --rules rules --from audited/round-1 --out case-17\`
   packs what both sides argue from; \`wattassay verify\` lets either make the report again.

Before the next round, keep \`audited/round-1/fingerprints.json\` (it holds no rider and no sample) and name it with
\`--earlier\`: a recording that is handed in again is then found.

Two workflows do this on GitHub: \`audit.yml\` audits an event as a whole when it is started by hand,
\`pull-request.yml\` what a pull request changes. In both, put the owner of the tool and the digest of the commit that you
reviewed in place of OWNER and COMMIT; for each round, name its folder in the second.

## Ways to hand files in that are not public

- A private form or a private upload folder that only the organisers can read.
- Mail to a mailbox that only the organisers read; delete the mail when the files are here.
- A pull request **to this private repository**, where every rider who can read it may read every other's files:
  only with riders who agreed to that.

Never: a public repository, an issue, a forum, a group chat.

## How long

Delete a recording when the time for appeals is over. Git keeps what was committed: keep recordings outside git
(\`.gitignore\` does so here unless you change it) or start a new repository each season and delete the old one.
`;
const ignored = `# What was audited can be made again, and holds health data.
audited/
case-*/
# Recordings stay on the machine of whoever audits. Delete these lines only if every rider agreed.
events/*/submissions/**
!events/*/submissions/README.md
`;
const attributes = `* text=auto eol=lf
*.fit binary
*.zip binary
*.gz binary
`;
const grades = `{
  "queriesThatRefer": null,
  "why": "Several queries about one rider are weighed by people, not added up."
}
`;
const rules = `# Our own rules

Files here are laid over the shipped rules: a file bears the name of the rule that it changes and says only what
differs. \`wattassay rules\` lists the rules, \`wattassay rules check rules/\` says what this folder changes. To switch a
rule off, say why; the reason stands in every report:

    late-drift.rule.json
    { "id": "late-drift", "off": "No rider can spin down at this venue." }

They speak where \`--rules rules\` names them, as the README and the workflows do. Rules for one event or category alone
lie in a folder beside its event file, which names it with \`"rules"\`.
`;
const eventFile = `{
  "name": "Round 1",
  "start": "2026-03-14T19:00:00+01:00",
  "finish": "2026-03-14T20:00:00+01:00",
  "kind": "race",
  "required": ["power", "heartRate"],
  "secondRecordings": { "top": 10 },
  "submissions": "submissions"
}
`;
const submissions = `# Submissions

One folder a rider, beginning with the rider's number:

    17/primary.fit    the recording that the result rests on
    17/second.fit     the same ride by another meter
    17/rider.json     body mass, class, meters; see \`riders/how-to-hand-in.md\`
    17/history/       earlier rides, or profile.json from \`profiles/\`

A ZIP named 17.zip with the same names in it works as well. What leaves a doubt is listed and belongs to nobody.
`;
const profiles = `# Profiles

\`wattassay profile rides/ --out profiles/17.json\` compiles a rider's earlier rides into a small file: best powers,
heart rate and the mass that climbs show, no traces, no positions. It is health data all the same. Copy it to the
event as \`submissions/17/profile.json\`.
`;
const handIn = `# How to hand in your recordings

1. **The primary recording** is the one that your result rests on, most often from the trainer. Export the original
   file (FIT is best) from the app that you raced with: look for "export original" or "download file". Do not edit,
   crop or convert it; another app's copy of it has lost things.
2. **A second recording**, where asked for, is the same ride by another meter: pedals, crank or hub, recorded by a
   head unit or watch **by itself**, not by the app that records the trainer. Start it before the race, stop it after,
   and let it record every second.
3. Do the zero offset of your meters and the spin-down of your trainer, warm, before the race, and note that you did.
4. Name the files with your number: \`17-primary.fit\`, \`17-second.fit\`. A ZIP of both is fine.
5. Tell us, if asked: body mass in kg, your class, and for each meter where it measures (crank, pedal, hub, trainer),
   whether it measures one side or two, and the accuracy that its maker states:

       {
         "massKg": 68,
         "recordClass": "open",
         "devices": [
           { "name": "primary", "place": "trainer", "sides": 2, "tolerancePercent": 2 },
           { "name": "second", "place": "pedal", "sides": 2, "tolerancePercent": 1 }
         ]
       }

Hand them in only by the private way that the organiser named, never in public: the files show where you live, when
you are out, and your heart rate. You can run the same check yourself before you hand in:
\`wattassay audit 17-primary.fit --second 17-second.fit\`.
`;
const consent = `# Consent and your rights

To be filled in by the organiser, who should have it read by someone who knows the law of the place:

- **Who** keeps your data: NAME AND ADDRESS OF THE ORGANISER; write to ADDRESS.
- **What**: your recordings (power, cadence, heart rate, speed, time; positions are in the file, and the check drops
  them as it reads), your body mass if you tell us, your earlier rides if you hand them in, what we asked, what you
  answered, what was decided. Heart rate and body mass are health data: we use them only with your explicit consent.
- **What for**: to decide whether a result that was earned on measured power can stand. For nothing else.
- **Who sees it**: those who decide, and on appeal those who hear it. It is not published. The result list shows a
  place, never a grade or a finding.
- **How long**: until the time for appeals is over, at the latest DATE.

You may see everything that we hold about you, and get a copy: \`wattassay case\` makes one. You may have mistakes
corrected, answer every question before anything is decided, withdraw your consent, have your data deleted (a result
that can no longer be checked may then not stand), and complain to the data protection authority of your country.
No computer decides about you: the program asks questions, people decide.

> I have read this. I hand in my recordings for this purpose and agree that my heart rate, and my body mass if I give
> it, are used for it.
>
> Name, date, signature; for riders under age, a parent or guardian
`;
/** Two parts: more are a number in two places. The tool is checked out at a reviewed commit, nothing is installed. */
const workflow = `# Audits an event of this PRIVATE repository. Reports are redacted; nothing fails the job.
# It sees what is committed: recordings only where .gitignore lets them in, which every rider must have agreed to.
name: audit
on:
  workflow_dispatch:
    inputs:
      event:
        description: Folder of the event
        default: events/round-1
        required: true
permissions:
  contents: read
jobs:
  part:
    runs-on: ubuntu-latest
    timeout-minutes: 60
    strategy:
      fail-fast: false
      matrix:
        part: [1, 2]
    steps:
      - uses: ${actions.checkout}
        with:
          persist-credentials: false
      - uses: ${actions.checkout}
        with:
          repository: OWNER/wattassay
          ref: COMMIT # the full digest of the commit that you reviewed
          path: .wattassay
          persist-credentials: false
      - uses: ./.wattassay
        with:
          event: \${{ inputs.event }}
          changed-only: false
          rules: rules
          part: \${{ matrix.part }}/2
          report-folder: part-\${{ matrix.part }}
      - uses: ${actions.upload}
        with:
          name: part-\${{ matrix.part }}
          path: part-\${{ matrix.part }}
          retention-days: 1
  whole:
    needs: part
    runs-on: ubuntu-latest
    timeout-minutes: 20
    steps:
      - uses: ${actions.checkout}
        with:
          persist-credentials: false
      - uses: ${actions.checkout}
        with:
          repository: OWNER/wattassay
          ref: COMMIT # the same commit
          path: .wattassay
          persist-credentials: false
      - uses: ${actions.node}
        with:
          node-version: 24
      - uses: ${actions.download}
        with:
          pattern: part-*
      - run: node .wattassay/dist/cli.js merge "$EVENT" part-1 part-2 --rules rules --out audited --redact --fail-on never
        env:
          EVENT: \${{ inputs.event }}
      - uses: ${actions.upload}
        with:
          name: audited
          path: audited
          retention-days: 14
`;
/** Every input that an organiser may want to change is written out, though most stand as they would by themselves. */
const proposals = `# Audits what a pull request to this PRIVATE repository changes, and shows a summary that goes by numbers.
# It sees what is committed: recordings only where .gitignore lets them in, which every rider must have agreed to.
name: pull request
on: pull_request
permissions:
  contents: read
concurrency:
  group: pull-request-\${{ github.ref }}
  cancel-in-progress: true
jobs:
  audit:
    runs-on: ubuntu-latest
    timeout-minutes: 30
    steps:
      - uses: ${actions.checkout}
        with:
          persist-credentials: false
          fetch-depth: 2 # the base branch as well: its rules judge, and what changed is told from it
      - uses: OWNER/wattassay@COMMIT # the full digest of the commit that you reviewed, never a branch or tag
        with:
          event: events/round-1 # the event for which files are handed in now
          changed-only: true # false: everybody's submission, each time
          terms-from: base # event file, results and rules of the base branch: no change judges itself
          rules: rules
          fail-on: never # a red cross beside a name is an accusation
          report-folder: audited
          redact: true # numbers only: no names, heart rate or mass
      - uses: ${actions.upload}
        if: \${{ !cancelled() }} # also where fail-on failed the job
        with:
          name: audited
          path: audited
          retention-days: 14
`;
// src/cli/new.ts
const examples$2 = `
Examples:
  $ wattassay new our-series

Lays out a folder for events, rules, profiles and texts for riders. Make it a PRIVATE repository: a recording in a
public one publishes a rider's home and heart rate for good.
`;
/** `wattassay new FOLDER`. `done` is told the exit status. */
function newCommand(io, done) {
	return new Command("new").summary("lay out a private results repository").description("Lays out a private results repository: events, rules, profiles, texts for riders, workflows.").argument("<folder>", "the folder to make; it must be empty or not there").addHelpText("after", examples$2).action(async (folder) => done(await run$2(io, folder)));
}
async function run$2(io, folder) {
	const place = path.resolve(io.cwd, folder);
	if ((await readdir(place).catch((error) => {
		if (error.code === "ENOENT") return [];
		throw whyUnwritable(error, folder);
	})).some((name) => name !== ".git")) throw new Problem({
		code: "file-unwritable",
		what: "this folder is not empty, and nothing in it is overwritten",
		where: folder,
		hint: "Name a folder that is not there yet"
	});
	const files = Object.entries(repositoryFiles(path.basename(place)));
	for (const [name, text] of files) {
		const file = path.join(place, ...name.split("/"));
		await makeFolder(path.dirname(file), path.join(folder, path.dirname(name)));
		await writeWhole(file, text);
	}
	io.stdout.write(`${files.map(([name]) => `${folder}/${name}`).join("\n")}\n`);
	remark(io, "Keep it private: the README says why, and how riders hand files in.");
	return status.done;
}
// src/report/words/completeness.ts
/** What a profile is good for, in three or four sentences: how complete it is, and where its bests can be trusted. */
function completenessSaid({ rides, days, longestPause, heartRate, meters, ...bests }) {
	const { confirmed, alone } = bests;
	return [
		`They lie within ${counted(days, "day")}, the longest time without one being ${counted(longestPause, "day")}.`,
		`With heart rate: ${heartRate} of ${rides}; with a power sensor named in the file: ${meters} of ${rides}.`,
		confirmed.length === 0 ? "No best is confirmed by a second ride that comes near it: this history says little of what its rider can do." : `A second ride comes near the best over ${listed(confirmed)}.`,
		...alone.length === 0 || confirmed.length === 0 ? [] : [`Over ${listed(alone)} the best stands alone: the rider may be able to do more.`]
	].join(" ");
}
function listed(seconds) {
	const said = seconds.map(duration);
	return said.length < 2 ? said.join("") : `${said.slice(0, -1).join(", ")} and ${said.at(-1)}`;
}
// src/cli/profile.ts
const examples$1 = `
Examples:
  $ wattassay profile rides/ --out profile.json
  $ wattassay profile new-rides/ --history profile.json --out profile.json
  $ wattassay audit trainer.fit --history profile.json

A profile holds the best mean power of each ride over some durations, no traces and no positions. It holds
heart rate, and the mass that climbs show, which are health data: keep it where only those see it who decide.
`;
/** `wattassay profile FOLDER`. `done` is told the exit status. */
function profileCommand(io, done) {
	return new Command("profile").summary("compile a rider's earlier rides into a small file").description("Compiles a folder or ZIP of a rider's earlier rides into a profile for --history.").argument("<folder>", "the recordings; folders in it are searched too").option("--out <file>", "write the profile to a file instead of printing it").option("--history <profile>", "an earlier profile to carry on: rides that it knows are not read again").addOption(options.rider()).addOption(options.device()).addHelpText("after", examples$1).action(async (folder, given) => done(await run$1(io, folder, given)));
}
async function run$1(io, folder, given) {
	if (given.out !== void 0) await keepApart(io, [historyRead(folder), given.rider], [{
		option: "--out",
		file: given.out
	}]);
	const progress = progressOn(io);
	try {
		const { devices } = (await riderGiven(io, given)).facts;
		const previous = given.history === void 0 ? void 0 : (await profileGiven(io, given.history)).profile;
		const { profile } = await historyGiven(io, folder, {
			...devices === void 0 ? {} : { devices },
			...previous === void 0 ? {} : { previous },
			onFile: (name) => progress.now(name),
			onTrouble: (said) => remark(io, `left out: ${said}`)
		});
		progress.clear();
		const text = printProfile(profile);
		if (given.out === void 0) io.stdout.write(text);
		else await writeWhole(path.resolve(io.cwd, given.out), text);
		remark(io, summary(profile));
		const completeness = completenessOf(profile);
		if (completeness !== null) remark(io, completenessSaid(completeness).replaceAll("\xA0", " "));
		return status.done;
	} finally {
		progress.clear();
	}
}
/** "41 rides; left out: 3 other sport, 1 duplicate". */
function summary({ rides, leftOut }) {
	const counts = /* @__PURE__ */ new Map();
	for (const { why } of leftOut) counts.set(why, (counts.get(why) ?? 0) + 1);
	const said = [...counts].map(([why, count]) => `${count} ${why}`).sort();
	const kept = `${rides.length} ${rides.length === 1 ? "ride" : "rides"}`;
	return said.length === 0 ? kept : `${kept}; left out: ${said.join(", ")}`;
}
// src/cli/show-rule.ts
const subjects = {
	primary: "the primary recording",
	recordings: "every recording",
	pairs: "the primary beside each second recording",
	rider: "the rider",
	submission: "the submission as a whole"
};
/** All that a rule says, for a reader: question, limits, numbers, words, source, examples. */
function showRule(rule, measure, width, paint) {
	const lines = [];
	const put = (text, indent = 0, lead = "") => {
		const pad = " ".repeat(indent);
		wrap(clean(text), Math.max(30, width - indent - lead.length)).forEach((line, i) => {
			lines.push(`${pad}${i === 0 ? lead : " ".repeat(lead.length)}${line}`.trimEnd());
		});
	};
	const part = (heading, items) => {
		if (items.length === 0) return;
		lines.push("", paint("underline", heading));
		for (const item of items) put(item, 2, "· ");
	};
	lines.push(`${paint("bold", rule.id)}  ${clean(rule.title)}`);
	put(rule.question);
	if (rule.off !== void 0) put(`Switched off: ${rule.off}`);
	lines.push("");
	put(`Put to ${subjects[rule.subjects]}; family ${rule.family}; highest level ${rule.highest}; measure ${measure.id}${inUnit(measure.unit)}.`);
	if (rule.needs.length > 0) put(`Needs ${rule.needs.join(", ")}.`);
	part("Limits", limitLines(rule, measure.unit));
	part("Held down", rule.ceilings.map(({ when, level, why }) => {
		const words = measure.circumstances[when];
		return `to ${level} when ${when}${words === void 0 || why.toLowerCase().includes(words.toLowerCase()) ? "" : ` (${words})`}: ${why}`;
	}));
	part("Numbers of the measure (options)", Object.entries(rule.options).map(([name, value]) => `${name} = ${said(value)}: ${measure.options[name]?.what ?? "not known"}`));
	part("What it says", Object.entries(rule.claims).map(([side, claim]) => `${side}: ${claim}`));
	part("It may be innocent", rule.innocent);
	part("It would be settled by", rule.settles);
	part("Where the limits come from", [sourceSaid(rule)]);
	const { falseAlarm } = rule.source;
	part("How often it asks honest riders", [falseAlarmSaid(rule) ?? (rule.highest === "note" ? "Never: what it finds is a remark." : "Not measured."), ...falseAlarm === void 0 ? [] : [`Measure it again: ${falseAlarm.command}`]]);
	part("Examples, judged whenever the rule is loaded", rule.examples.map((example) => exampleLine(example, measure.unit)));
	return `${lines.join("\n")}\n`;
}
/** What the measure's value is counted in; a count or a ratio bears no unit. */
function inUnit(unit) {
	if (unit === "share") return ", a share";
	const mark = unitMark(unit);
	return mark === "" ? "" : `, in ${mark}`;
}
function limitLines({ limits }, unit) {
	const set = raisedLevels.flatMap((level) => {
		const limit = limits[level];
		return limit === void 0 ? [] : [{
			level,
			limit
		}];
	});
	const lines = set.map(({ level, limit }) => `${level}: ${ruleLimitSaid(limit, unit)}`);
	return set.some(({ limit }) => limit.of !== "value") ? [...lines, spreadSaid] : lines;
}
function said(value) {
	return typeof value === "number" ? String(value) : `[${value.join(", ")}]`;
}
function exampleLine({ value, interval, count, circumstances = [], level }, unit) {
	const when = circumstances.length === 0 ? "" : `, ${circumstances.join(", ")}`;
	return `${ruleNumber(value, unit)} [${interval.map(number).join(", ")}] from ${count}${when}: ${level}`;
}
// src/cli/rules.ts
const listExamples = `
Examples:
  $ wattassay rules
  $ wattassay rules show late-drift
  $ wattassay rules check our-rules/
  $ wattassay rules --rules our-rules/
`;
const showExamples = `
Examples:
  $ wattassay rules show late-drift
  $ wattassay rules show late-drift --rules our-rules/
`;
const checkExamples = `
Examples:
  $ wattassay rules check our-rules/

A file in the folder bears the name of the rule that it changes and says only what differs:
  our-rules/late-drift.rule.json   { "id": "late-drift", "off": "No rider can spin down at this venue." }

Exit status: 0 the folder can be used; 2 it cannot, and every reason is told.
`;
/** `wattassay rules`, `rules show ID`, `rules check FOLDER`. `done` is told the exit status. */
function rulesCommand(io, done) {
	const list = new Command("rules").summary("list the rules, show one, or check a folder of your own").description("Lists the rules by the kind of evidence they argue from.").argument("[command]").usage("[options] | show <id> | check <folder>").addOption(options.rules()).addHelpText("after", listExamples).action(async (word, given) => {
		if (word !== void 0) throw unknownWord(word);
		const { set } = await rulesGiven(io, given.rules);
		io.stdout.write(listing(set, io));
		done(status.done);
	});
	list.addCommand(new Command("show").description("Shows a rule: its question, limits, numbers, words, source and examples.").argument("<id>", "the id of the rule").addOption(options.rules()).addHelpText("after", showExamples).action(async (id, _, command) => {
		const { set } = await rulesGiven(io, command.optsWithGlobals().rules);
		io.stdout.write(shown(set, id, io));
		done(status.done);
	}));
	list.addCommand(new Command("check").description("Checks a folder of an event's own rules and says what it changes.").argument("<folder>", "the folder").addHelpText("after", checkExamples).action(async (folder) => {
		const { set } = await rulesGiven(io, folder);
		io.stdout.write(changes(set));
		done(status.done);
	}));
	return list;
}
function unknownWord(word) {
	const isRule = shipped.rules.some(({ id }) => id === word);
	const near = nearest(word, ["show", "check"]);
	if (word === "list") return new Problem({
		code: "usage",
		what: "there is no command “rules list”",
		hint: "wattassay rules lists them"
	});
	const hint = isRule ? `wattassay rules show ${word}` : near === null ? null : `wattassay rules ${near}`;
	return new Problem({
		code: "usage",
		what: `there is no command “rules ${word}”`,
		hint: hint === null ? "See wattassay rules --help" : `Did you mean: ${hint}`
	});
}
function listing({ rules }, { stdout, env }) {
	const paint = painter(stdout, env);
	const room = Math.max(...rules.map(({ id }) => id.length));
	const families = [...new Set(rules.map(({ family }) => family))];
	const line = ({ id, highest, question, off }) => {
		const words = off === void 0 ? question : `switched off: ${off}`;
		return `  ${id.padEnd(room)}  ${highest.padEnd(10)}  ${clean(words)}\n`;
	};
	return families.map((family) => {
		const lines = rules.filter((rule) => rule.family === family).map(line);
		return `${paint("underline", family)}\n${lines.join("")}`;
	}).join("\n");
}
function shown({ rules }, id, { stdout, env }) {
	const rule = rules.find((candidate) => candidate.id === id);
	const measure = shipped.measures.find((candidate) => candidate.id === rule?.measure);
	if (rule === void 0 || measure === void 0) {
		const near = nearest(id, rules.map((candidate) => candidate.id));
		throw new Problem({
			code: "usage",
			what: `there is no rule “${id}”`,
			hint: near === null ? "wattassay rules lists them" : `Did you mean “${near}”?`
		});
	}
	return showRule(rule, measure, Math.min(100, widthOf(stdout)), painter(stdout, env));
}
/** What an event's folder does to the shipped rules, field by field. */
function changes(set) {
	const lines = ruleDifferences(set);
	const files = `${set.overlaid.length} ${set.overlaid.length === 1 ? "file" : "files"}`;
	return `${(lines.length === 0 ? ["nothing differs from the shipped rules"] : lines).map((line) => clean(line)).join("\n")}\n${files} in order; rule set ${set.sha256}\n`;
}
// src/report/words/verify.ts
/** Things named one by one; of the others it is said how many there are. */
const mostItems = 10;
const mostFields = 3;
/** Characters of a value that is quoted. */
const longestValue = 40;
const factSaid = (field) => Object.hasOwn(factNames, field) ? factNames[field] : shorten(field, 30);
/** The outcome in lines, the answer in the first. */
function verifiedSaid(verified) {
	const { files, rules, outcome, redacted, unlike, facts, unopened } = verified;
	const from = `${counted(files, "file")} and the rules “${rules}”, found by checksum, give`;
	return [
		...{
			same: [`The same to the byte: ${from} this report again.`],
			"same values": [`Not the same text: ${from} every value of this report again, but the file was changed after it was written: its layout, the order of its fields, or a field that stands twice.`],
			differs: [`Not the same: ${from} another result in ${counted(unlike.length, "place")}.`, ...unlikeSaid(unlike)],
			"mass unknown": [`The same as far as it can be compared: ${from} another result only in ${counted(unlike.length, "place")} that may rest on body mass, which a redacted report leaves out. Give it as --mass to compare these too.`, ...unlikeSaid(unlike)]
		}[outcome],
		...redacted ? ["The report is redacted: names, heart rate and body mass are in neither of the two that were compared."] : [],
		...facts.length === 0 ? [] : [`Taken as the report states it, for none of the files says so: ${facts.map(factSaid).join(", ")}.`],
		...unopened === 0 ? [] : [`${counted(unopened, "second recording")} could not be opened when the report was made: that is taken as the report states it.`]
	];
}
function unlikeSaid(unlike) {
	const more = unlike.length - mostItems;
	return [...unlike.slice(0, mostItems).map((one) => `  ${itemSaid(one)}`), ...more > 0 ? [`  and ${counted(more, "more place", "more places")}`] : []];
}
/** Lists have members: one of them is meant. */
const members = {
	inputs: "input",
	findings: "finding",
	measurements: "measurement",
	alignment: "alignment",
	charts: "chart"
};
function itemSaid({ kind, item, fields }) {
	const name = item === null ? kind : `${members[kind] ?? kind} ${shorten(item, 60)}`;
	const only = fields[0];
	if (only !== void 0 && only.path.length === 0) return `${shorten(name, 60)}: ${changeSaid(only)}`;
	const said = fields.slice(0, mostFields).map((one) => `${shorten(one.path.join(" › "), 60)} ${changeSaid(one)}`);
	const more = fields.length - mostFields;
	return `${shorten(name, 80)}: ${said.join("; ")}${more > 0 ? `; and ${counted(more, "more field")}` : ""}`;
}
/** "stated query, found refer". */
function changeSaid({ before, after }) {
	if (before === void 0) return "not stated, but found";
	if (after === void 0) return "stated, but not found";
	if (Array.isArray(before) && Array.isArray(after) && Math.max(before.length, after.length) > 3) return listSaid(before, after);
	return `stated ${valueSaid(before)}, found ${valueSaid(after)}`;
}
function listSaid(before, after) {
	if (before.length !== after.length) return `stated ${counted(before.length, "item")}, found ${number(after.length)}`;
	const off = before.flatMap((value, i) => sameJson(value, after[i]) ? [] : [i]);
	const at = off[0] ?? 0;
	return `${number(off.length)} of ${counted(before.length, "item")}, the first at place ${number(at + 1)}: stated ${valueSaid(before[at])}, found ${valueSaid(after[at])}`;
}
function valueSaid(value) {
	return shorten(typeof value === "string" ? `“${value}”` : JSON.stringify(value) ?? "nothing", longestValue);
}
// src/cli/by-checksum.ts
/** Missing files that are named one by one. */
const mostNamed = 5;
/**
* Finds files by their checksums among files, folders and ZIPs, whatever they are called there.
*
* @throws AggregateError of Problems: one for each file that is not found
*/
async function findByChecksum(io, wanted, places, onFile) {
	const open = new Set(wanted.map((input) => input.sha256));
	const found = /* @__PURE__ */ new Map();
	const names = /* @__PURE__ */ new Set();
	const offer = async (name, bytes, again) => {
		const digest = await sha256(bytes);
		names.add(path.basename(name));
		if (open.delete(digest)) found.set(digest, again);
	};
	for (const place of places) for (const { shown, read } of await candidates(io, place)) {
		if (open.size === 0) break;
		onFile(shown);
		const bytes = await read();
		if (bytes === null) continue;
		await offer(shown, bytes, async () => await read() ?? /* @__PURE__ */ new Uint8Array());
		if (open.size > 0 && isArchive(bytes)) await offerMembers({
			name: shown,
			bytes
		}, offer);
	}
	const missing = wanted.filter((input) => open.has(input.sha256));
	if (missing.length > 0) throw new AggregateError(missingProblems(missing, names));
	return found;
}
async function offerMembers(archive, offer) {
	try {
		for await (const member of openArchive(archive)) if (!(member instanceof Problem)) await offer(member.name, member.bytes, async () => member.bytes);
	} catch (error) {
		if (!(error instanceof Problem)) throw error;
	}
}
async function candidates({ cwd }, named) {
	const place = path.resolve(cwd, named);
	const most = limits.archiveBytes;
	if (!await isFolder(place)) return [{
		shown: named,
		read: async () => (await readFileSafely(place, {
			most,
			shown: named
		})).bytes
	}];
	return (await filesBelow(place)).map(({ path: file, name }) => ({
		shown: name,
		read: async () => {
			try {
				return (await readFileSafely(file, {
					most,
					root: place,
					shown: name
				})).bytes;
			} catch (error) {
				if (error instanceof Problem) return null;
				throw error;
			}
		}
	}));
}
function missingProblems(missing, names) {
	const problems = missing.slice(0, mostNamed).map(({ role, name, sha256: digest }) => {
		const changed = names.has(path.posix.basename(name)) ? " A file of this name is there, with another content." : "";
		return new Problem({
			code: "file-missing",
			what: `the ${role} file with the checksum ${digest.slice(0, 12)}… is not among the files given.${changed}`,
			where: name,
			hint: "Name it, or a folder that holds it, as it was handed in: a file that was saved again has another checksum"
		});
	});
	const more = missing.length - problems.length;
	if (more <= 0) return problems;
	const what = `${more} more of the ${missing.length} files that are missing are not named here`;
	return [...problems, new Problem({
		code: "file-missing",
		what
	})];
}
// src/cli/verify.ts
const examples = `
Examples:
  $ wattassay verify report.json trainer.fit pedals.fit
  $ wattassay verify case-14/report.json case-14
  $ wattassay verify report.json handed-in/ --rules our-rules/
  $ wattassay verify published.json trainer.fit --mass 68

Files are found by their checksums, whatever they are called. Everything that the report lists under "inputs" must be
among them, and the rules must be those that it was judged by. A redacted report leaves out body mass: with --mass,
the checks that rest on it can be compared too.

Exit status: 0 the same to the byte; 1 it differs, or cannot be compared in full; 2 could not run.
`;
/** `wattassay verify REPORT FILES...`. `done` is told the exit status. */
function verifyCommand(io, done) {
	return new Command("verify").summary("make a report again from its files, and say whether it is the same").description("Makes a report again from the files that it rests on, and says whether it is the same to the byte.").argument("<report>", "the report in its JSON form").argument("<files...>", "the files that it rests on, or folders that hold them").addOption(options.rules()).addOption(options.mass()).addHelpText("after", examples).action(async (report, files, given) => done(await run(io, report, files, given)));
}
async function run(io, file, places, given) {
	const progress = progressOn(io);
	try {
		progress.now("reading");
		const { bytes } = await readNamed(io, file, limits.reportBytes);
		const { whole, recorded } = await readReport(new TextDecoder().decode(bytes), file);
		const rules = await rulesOf(io, recorded, file, given.rules);
		const files = await findByChecksum(io, filesOf(recorded), places, (name) => progress.now(`looking at ${name}`));
		const { rider, race } = recorded.settings;
		const facts = {
			rider: await riderFrom(withMass(rider, recorded, given), `${file} › settings › rider`),
			race: await raceFrom(race, `${file} › settings › race`)
		};
		const made = await audit({
			...await handedIn(recorded, files),
			...facts,
			profile: await profileOf(recorded, files, facts.rider, file),
			otherInputs: recorded.inputs.filter(({ role }) => !recordingRoles.includes(role))
		}, {
			...rules.set,
			name: recorded.rules.name
		}, (stage) => progress.now(stage));
		const verified = {
			...outcomeOf({
				bytes,
				whole,
				again: recorded.settings.redacted ? redact(made) : made,
				rules: rules.set,
				massKnown: facts.rider.massKg !== void 0
			}),
			files: files.size,
			rules: recorded.rules.name,
			redacted: recorded.settings.redacted,
			facts: await statedAlone(recorded, files),
			unopened: recorded.unreadable.filter(({ sha256 }) => sha256 === null).length
		};
		progress.clear();
		for (const line of verifiedSaid(verified)) io.stdout.write(`${clean(line)}\n`);
		return verified.outcome === "same" ? status.done : status.reached;
	} finally {
		progress.clear();
	}
}
/** Rules are known by their checksum: a folder may have been renamed, and a name says nothing. */
async function rulesOf(io, { rules: { name, sha256 } }, file, folder) {
	const given = await rulesGiven(io, folder);
	if (given.set.sha256 === sha256) return given;
	throw new Problem({
		code: "report-wrong",
		what: `it was judged by other rules: “${name}” with the checksum ${sha256.slice(0, 12)}…, and not ${folder === void 0 ? "the shipped ones" : "those of this folder"}, with ${given.set.sha256.slice(0, 12)}…`,
		where: file,
		hint: folder === void 0 ? "Name the folder of the rules that it was judged by as --rules" : "Name another folder as --rules, or none if it was judged by the shipped rules"
	});
}
const recordingRoles = ["primary", "second"];
/** Everything that must be found: second recordings that could not be read are listed apart. */
function filesOf({ inputs, unreadable }) {
	const torn = unreadable.flatMap(({ name, sha256 }) => sha256 === null ? [] : [{
		role: "second",
		name,
		sha256
	}]);
	return [...inputs.filter(({ role }) => role !== "rules"), ...torn];
}
function withMass(rider, { settings: { redacted } }, { mass }) {
	if (mass === void 0) return rider;
	if (redacted) return {
		...rider,
		massKg: mass
	};
	throw new Problem({
		code: "usage",
		what: "this report states the facts that it was made with",
		where: "--mass",
		hint: "Leave it out: it is for a redacted report alone"
	});
}
/** The recordings under the names that the report gives them. */
async function handedIn(recorded, files) {
	const recordings = [];
	for (const { role, name, sha256 } of filesOf(recorded)) if (recordingRoles.includes(role)) recordings.push({
		role,
		name,
		bytes: await files.get(sha256)()
	});
	const [primary, another] = recordings.filter(({ role }) => role === "primary");
	if (primary === void 0 || another !== void 0) throw new Problem({
		code: "report-wrong",
		what: "a report rests on one primary recording, and this one does not name one",
		hint: "Ask for the report as it was written"
	});
	return {
		primary,
		seconds: recordings.filter(({ role }) => role === "second"),
		unopened: recorded.unreadable.flatMap(({ name, sha256, why }) => sha256 === null ? [{
			name,
			why
		}] : [])
	};
}
async function profileOf({ inputs, hadHistory }, files, { devices }, file) {
	if (!hadHistory) return null;
	const profile = inputs.find(({ role }) => role === "profile");
	if (profile !== void 0) return profileFrom(new TextDecoder().decode(await files.get(profile.sha256)()), profile.name);
	const past = inputs.filter(({ role }) => role === "history");
	if (past.length === 0) throw new Problem({
		code: "report-wrong",
		what: "it looked at past rides, and does not say in which files",
		where: file,
		hint: "Make the report anew with wattassay audit and --history"
	});
	const { profile: compiled } = await historyFrom(opened(past, files), {
		...devices === void 0 ? {} : { devices },
		onFile: () => {},
		onTrouble: () => {}
	});
	return compiled;
}
async function* opened(inputs, files) {
	for (const { name, sha256 } of inputs) yield {
		name,
		bytes: await files.get(sha256)()
	};
}
/** What the report's text comes to beside the one that its files give. */
function outcomeOf(given) {
	const { bytes, whole, again, rules, massKnown } = given;
	const text = renderJson(again);
	const ours = new TextEncoder().encode(text);
	if (ours.length === bytes.length && ours.every((byte, i) => byte === bytes[i])) return {
		outcome: "same",
		unlike: []
	};
	const unlike = compare(whole, JSON.parse(text));
	if (unlike.length === 0) return {
		outcome: "same values",
		unlike
	};
	return {
		outcome: again.settings.redacted && !massKnown && unlike.every(mayRestOnMass(rules.rules)) ? "mass unknown" : "differs",
		unlike
	};
}
/** Facts that the report states and none of its files does: given as options, or by an event. */
async function statedAlone({ inputs, settings }, files) {
	const alone = [];
	for (const kind of ["rider", "race"]) {
		const input = inputs.find(({ role }) => role === kind);
		const text = input === void 0 ? "{}" : new TextDecoder().decode(await files.get(input.sha256)());
		const said = parseJson(text, "facts-wrong", input?.name ?? kind);
		for (const [name, value] of Object.entries(settings[kind])) if (said?.[name] === void 0 || canonical(said[name]) !== canonical(value)) alone.push(name);
	}
	return alone;
}
// src/cli.ts
/** Runs a command line and returns its exit status. Nothing outside `io` is touched but files. */
async function main(argv, io) {
	let result = status.done;
	const program = commands(io, (reached) => {
		result = reached;
	});
	try {
		await program.parseAsync([...argv], { from: "user" });
		return result;
	} catch (error) {
		return failed(error, io);
	}
}
/** The whole command line, ready to be parsed or described. */
function commands(io, done) {
	const program = new Command(tool.name).description("Audits cycling power recordings: what agrees, what does not, and what would settle it.").version(tool.version, "--version", "print the version").helpOption("--help", "explain a command").helpCommand("help [command]", "explain a command").addHelpText("after", "\nStart with:\n  $ wattassay audit trainer.fit --second pedals.fit --out report.html\n");
	const subcommands = [
		auditCommand(io, done),
		profileCommand(io, done),
		rulesCommand(io, done),
		eventCommand(io, done),
		mergeCommand(io, done),
		verifyCommand(io, done),
		decideCommand(io, done),
		caseCommand(io, done),
		newCommand(io, done)
	];
	for (const command of subcommands) program.addCommand(command);
	for (const command of everyCommand(program)) dress(command, io);
	return program;
}
function everyCommand(command) {
	return [command, ...command.commands.flatMap(everyCommand)];
}
/** Settings that every command shares: where it writes, in which style, and that it never exits itself. */
function dress(command, io) {
	const paint = painter(io.stdout, io.env);
	command.exitOverride().helpOption("--help", "explain this command").showHelpAfterError("(--help explains the command)").configureOutput({
		writeOut: (text) => io.stdout.write(wrapped(text, helpWidth(io.stdout))),
		writeErr: (text) => io.stderr.write(cleanLines(text)),
		getOutHelpWidth: () => helpWidth(io.stdout),
		getErrHelpWidth: () => helpWidth(io.stderr),
		getOutHasColors: () => coloured(io.stdout, io.env),
		getErrHasColors: () => coloured(io.stderr, io.env)
	}).configureHelp({
		styleTitle: (title) => paint("underline", title),
		sortOptions: false,
		subcommandTerm: (one) => [one.name(), ...one.registeredArguments.map(argumentSaid)].join(" ")
	});
}
function argumentSaid(argument) {
	const said = `${argument.name()}${argument.variadic ? "..." : ""}`;
	return argument.required ? `<${said}>` : `[${said}]`;
}
/** Paragraphs that stand at the margin are broken anew to the width; commands to copy, indented, are left whole. */
function wrapped(text, width) {
	return text.replace(/^\S.*(\n\S.*)*/gm, (paragraph) => wrap(paragraph.replaceAll("\n", " "), width).join("\n"));
}
function helpWidth(stream) {
	return Math.min(100, widthOf(stream));
}
/** A message may quote what a stranger called a file. */
function cleanLines(text) {
	return text.split("\n").map(clean).join("\n");
}
function failed(error, io) {
	if (error instanceof CommanderError) return error.exitCode === 0 ? status.done : status.couldNotRun;
	const problems = problemsIn(error);
	if (problems !== null) {
		complain(io, problems);
		return status.couldNotRun;
	}
	remark(io, "This is a fault of the program, not of your files. Please report it with these lines:");
	io.stderr.write(`${cleanLines(error instanceof Error ? error.stack ?? error.message : String(error))}\n`);
	return status.couldNotRun;
}
// src/bin/wattassay.ts
process.stdout.on("error", (error) => {
	if (error.code !== "EPIPE") throw error;
});
/** The signal is sent once more, with nobody listening: whoever started the program sees that it was stopped. */
function whenStopped(say) {
	const signals = ["SIGINT", "SIGTERM"];
	const silent = () => {
		for (const signal of signals) process.off(signal, stop);
	};
	const stop = (signal) => {
		silent();
		say();
		process.kill(process.pid, signal);
	};
	for (const signal of signals) process.on(signal, stop);
	return silent;
}
const { stdout, stderr, env } = process;
const io = {
	stdout,
	stderr,
	env,
	cwd: process.cwd(),
	whenStopped
};
process.exitCode = await main(process.argv.slice(2), io);
export {};
