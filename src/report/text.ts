import type { Alignment, Chart, Raised, Report, ReportRecording } from '../types.ts';
import { picture, type Strip } from './chart/index.ts';
import { extent } from './chart/reduce.ts';
import { condense, spark } from './chart/spark.ts';
import { clean } from './clean.ts';
import { byTitle, type Named, type Outline, outline, type Told } from './outline.ts';
import { cautions } from './words/cautions.ts';
import { driftSaid, offsetSaid, onPrimaryClock, runsApart } from './words/clocks.ts';
import {
  becauseSaid,
  gradeMeans,
  gradeWord,
  levelHeadings,
  missingSaid,
  reachSaid,
  unreadableSaid,
} from './words/grade.ts';
import { heldByCautiousEnd } from './words/limit.ts';
import { clock, duration, quantity, span, spans } from './words/number.ts';
import { capital, list, plain, type Sentence } from './words/sentence.ts';
import { setPointsTitle, targetsSaid, trendSaid } from './words/set-points.ts';
import { falseAlarmSaid } from './words/source.ts';
import { alignmentSaid, damageSaid, defectSaid } from './words/story.ts';
import { deviceSaid, meterName, recordingName } from './words/subject.ts';
import { columns, wrap } from './wrap.ts';

export interface TextOptions {
  /** Columns of the terminal. */
  readonly width: number;
  readonly colour: boolean;
  /** Plain ASCII for terminals that know nothing else. */
  readonly ascii: boolean;
}

/** Narrower than this nothing can be read; wider than this no line is pleasant to read. */
const widths = [40, 100] as const;
const longestSpark = 60;

type Style = 'bold' | 'dim' | 'underline';
const codes: Readonly<Record<Style, readonly [on: number, off: number]>> = {
  bold: [1, 22],
  dim: [2, 22],
  underline: [4, 24],
};

/** The report for a terminal: grade and reach first, then what was found, then what could not be checked. */
export function renderText(report: Report, options: TextOptions): string {
  const width = Math.min(widths[1], Math.max(widths[0], Math.floor(options.width)));
  const page = new Page(width, options);
  const told = outline(report);
  gradeOf(page, report, told);
  for (const { level, findings } of told.raised) {
    page.heading(levelHeadings[level]);
    for (const one of findings) findingOf(page, report, one, level, options.ascii);
  }
  nextOf(page, told);
  fineOf(page, told);
  uncheckedOf(page, told);
  metersOf(page, report);
  recordingsOf(page, report);
  return page.text();
}

/** Lines of a fixed width. Every text that enters is cleaned here, so that no caller can forget it. */
class Page {
  readonly width: number;
  private readonly lines: string[] = [];
  private readonly colour: boolean;
  private readonly ascii: boolean;

  constructor(width: number, { colour, ascii }: TextOptions) {
    this.width = width;
    this.colour = colour;
    this.ascii = ascii;
  }

  gap(): void {
    if (this.lines.length > 0 && this.lines.at(-1) !== '') this.lines.push('');
  }

  heading(text: string): void {
    this.gap();
    this.put(text, { style: 'underline' });
  }

  /** A paragraph: wrapped, the first line behind `lead`, the others under its text. */
  put(
    text: string,
    { indent = 0, lead = '', style }: { indent?: number; lead?: string; style?: Style } = {},
  ): void {
    const first = this.safe(lead);
    const hang = ' '.repeat(columns(first));
    const pad = ' '.repeat(indent);
    for (const [index, line] of wrap(this.safe(text), this.width - indent - hang.length).entries()) {
      const front = index === 0 ? first : hang;
      this.lines.push(`${pad}${front}${this.paint(line, style)}`);
    }
  }

  text(): string {
    return `${this.lines.map((line) => line.trimEnd()).join('\n')}\n`;
  }

  private paint(text: string, style: Style | undefined): string {
    if (!this.colour || style === undefined) return text;
    const [on, off] = codes[style];
    return `\u001b[${on}m${text}\u001b[${off}m`;
  }

  private safe(text: string): string {
    return this.ascii ? inAscii(clean(text)) : clean(text);
  }
}

const plainer: Readonly<Record<string, string>> = {
  '\u00a0': ' ',
  '\u2212': '-',
  '–': '-',
  '—': '-',
  '·': '-',
  '…': '...',
  '“': '"',
  '”': '"',
  '‘': "'",
  '’': "'",
  '′': "'",
  '±': '+/-',
  '°': ' deg',
  '×': 'x',
};

function inAscii(text: string): string {
  return text.replace(/[^\x20-\x7e]/gu, (character) => plainer[character] ?? '?');
}

function gradeOf(page: Page, report: Report, { rests }: Outline): void {
  page.put(`${gradeWord(report.grade)}. ${gradeMeans(report.grade)}`, { style: 'bold' });
  page.put(reachSaid(report));
  for (const said of [damageSaid(report), unreadableSaid(report), missingSaid(report), becauseSaid(report)])
    if (said !== null) page.put(said);
  if (rests.length > 0) page.put(`It rests on: ${byTitle(rests).map(restSaid).join('; ')}.`);
  page.gap();
  for (const caution of cautions(report)) page.put(caution, { lead: '· ', style: 'dim' });
}

const numbered = ({ number, title }: Named) => `${number}, “${title}”`;

/** A title once, with the numbers of the findings that bear it where there are several. */
function restSaid([title, findings]: readonly [string, readonly Told[]]): string {
  return findings.length === 1 ? title : `${title} (${plain(list(findings.map((one) => one.number)))})`;
}

function findingOf(page: Page, report: Report, told: Told, level: Raised, ascii: boolean): void {
  const { finding, rule } = told;
  page.gap();
  page.put(`${told.title} (${told.about})`, { lead: `${told.number}. `, style: 'bold' });
  const indent = 3;
  page.put(plain(told.claim), { indent });
  if (told.value !== null)
    page.put(
      [told.value, told.limits, told.byCautiousEnd ? heldByCautiousEnd : null]
        .filter((part) => part !== null)
        .join('; '),
      { indent },
    );
  if (told.honest !== null) page.put(told.honest, { indent });
  for (const id of finding.charts.slice(0, 1)) {
    const chart = report.charts.find((one) => one.id === id);
    if (chart === undefined) continue;
    const { strip } = picture(chart, {
      id,
      marked: finding.stretches,
      meter: (subject) => meterName(report, subject),
    });
    if (strip !== null) stripOf(page, strip, indent, ascii);
  }
  if (finding.stretches.length > 0) page.put(`When: ${spans(finding.stretches, 6)}`, { indent });
  for (const remark of told.remarks) page.put(plain(remark), { indent });
  if (told.accountedBy !== null) page.put(`Accounted for by ${numbered(told.accountedBy)}.`, { indent });
  if (told.accountsFor.length > 0)
    page.put(`It also accounts for ${plain(list(told.accountsFor.map(numbered)))}.`, { indent });
  if (level === 'note' || rule === null || told.accountedBy !== null) return;
  if (told.under !== null) {
    page.put(`What it may innocently be, and what would settle it, stand under ${told.under.number}.`, {
      indent,
    });
    return;
  }
  if (rule.innocent.length > 0) page.put(`It may be innocent: ${rule.innocent.join(' ')}`, { indent });
  if (rule.settles.length > 0) page.put(`It would be settled by: ${rule.settles.join(' ')}`, { indent });
  const rate = falseAlarmSaid(rule);
  if (rate !== null) page.put(rate, { indent });
}

/** The evidence in one row, with the ends of its scale. */
function stripOf(page: Page, { label, values, say }: Strip, indent: number, ascii: boolean): void {
  const cells = condense(values, Math.min(longestSpark, page.width - indent - 2));
  const shown = extent(cells);
  if (shown === null) return;
  page.put(spark(cells, shown, ascii).replaceAll(' ', '\u00a0'), { indent });
  page.put(`${label}, ${say(shown[0])} to ${say(shown[1])}`, { indent, style: 'dim' });
}

function nextOf(page: Page, { next }: Outline): void {
  if (next.length === 0) return;
  page.heading('What to do next');
  for (const { whats, settles } of next) {
    for (const what of whats) {
      const which = settles.length === 0 ? '' : ` (settles ${settles.map((one) => one.number).join(', ')})`;
      page.put(`${what}${which}`, { lead: '· ' });
    }
  }
}

function fineOf(page: Page, { fine }: Outline): void {
  if (fine.length === 0) return;
  page.heading('Checked and found fine');
  for (const one of fine) {
    page.put(`${one.question}${aside(one)} ${plain(one.claim)}`, { lead: '· ' });
    if (one.honest !== null) page.put(one.honest, { indent: 2, style: 'dim' });
  }
}

/** Which recording is meant, where the same check was put to several. */
function aside({ about, several }: { readonly about: string; readonly several: boolean }): string {
  return several ? ` (${about})` : '';
}

const inFull = (why: Sentence | null) => (why === null ? '' : ` (${plain(why)})`);

function uncheckedOf(page: Page, { unchecked }: Outline): void {
  if (unchecked.length === 0) return;
  page.heading('What could not be checked, and why');
  for (const { because, checks } of unchecked) {
    const each = checks.map((one) => one.question + aside(one) + inFull(one.why));
    page.put(`${plain(capital(because))}. ${each.join(' ')}`, { lead: '· ' });
  }
}

/** Charts whose numbers a terminal is told in lines, in this order: few, and what the whole report is about. */
const inLines: readonly Chart['kind'][] = ['sections', 'meters'];

/** Where the meters agree and where not, each beside the others, and how what they hold at a set-point goes. */
function metersOf(page: Page, report: Report): void {
  for (const chart of inLines.flatMap((kind) => report.charts.filter((one) => one.kind === kind))) {
    const { title, table } = picture(chart, {
      id: chart.id,
      marked: [],
      meter: (subject) => meterName(report, subject),
    });
    page.heading(title);
    for (const row of table.rows) page.put(rowSaid(table.head, row), { lead: '· ' });
  }
  const { setPoints } = report;
  if (setPoints === null || setPoints.trends.length === 0) return;
  page.heading(setPointsTitle);
  page.put(targetsSaid(report, setPoints));
  for (const trend of setPoints.trends) page.put(trendSaid(report, trend), { lead: '· ' });
}

/** "13 sprints – mean power: 656 W; primary against second: 19.3 % (15.8 to 22.8 %)". */
function rowSaid(head: readonly string[], [first, ...cells]: readonly string[]): string {
  const said = cells.flatMap((cell, index) => (cell === '' ? [] : [`${head[index + 1]}: ${cell}`]));
  return `${first} – ${said.join('; ')}`;
}

function recordingsOf(page: Page, report: Report): void {
  const { primary, seconds, unreadable, window } = report.submission;
  page.heading('The recordings');
  for (const one of [primary, ...seconds]) recordingOf(page, report, one);
  for (const { name, why } of unreadable)
    page.put(`Unreadable second recording “${name}”: ${why}`, { lead: '· ' });
  page.put(
    `Race window, ${window.given ? 'as given' : 'proposed from the ride'}: ${span(window.stretch)} of the ride.`,
    { lead: '· ' },
  );
}

/** When a recording begins; by the primary's clock where it was put on it. */
function beginsSaid(report: Report, one: ReportRecording): string {
  return onPrimaryClock(report, one) ? `${clock(one.start)} by the primary’s clock` : clock(one.start);
}

/** How a second recording lies against the primary's clock, how surely, and how much of the race both hold. */
function clockSaid(alignment: Alignment): string {
  const offset = offsetSaid(alignment);
  const drift = runsApart(alignment) ? driftSaid(alignment) : null;
  const said = alignmentSaid(alignment);
  if (!alignment.secure) return `Not put on the primary’s clock. ${said}`;
  return `On the primary’s clock. ${said} Its clock is ${offset}${drift === null ? '' : ` and runs ${drift}`}. Both recorded ${quantity(alignment.coverage, 'share')} of the race.`;
}

function recordingOf(page: Page, report: Report, one: ReportRecording): void {
  const mean = one.meanPower === null ? '' : `; mean ${quantity(one.meanPower, 'W')}`;
  page.put(
    `${plain(capital([recordingName(report, one)]))}: “${one.name}”${one.field === null ? '' : `, added field “${one.field}”`}, ${plain(deviceSaid(one.device))}; ${beginsSaid(report, one)}, ${duration(one.seconds)}${mean}.`,
    { lead: '· ' },
  );
  for (const defect of one.defects) page.put(plain(defectSaid(defect)), { indent: 2 });
  const alignment = report.alignment.find(({ subject }) => subject === one.subject);
  if (alignment !== undefined) page.put(clockSaid(alignment), { indent: 2 });
  page.put(`Checksum ${one.sha256}`, { indent: 2, style: 'dim' });
}
