/**
 * The page's own script: lets a reader zoom into the ride, read every meter under the cursor and see the
 * ride averaged as it was judged. It draws with the same code as the page itself; without it the page loses
 * nothing but this.
 */

import type { Stretch, Subject, TracesChart } from '../../types.ts';
import { gutter } from '../chart/frame.ts';
import { live, readout } from '../words/live.ts';
import { picture } from './draw.ts';
import { type LiveChart, type LiveData, unpackChart } from './pack.ts';
import { type Channel, channelsOf, readingsAt } from './readings.ts';
import { around, including, settle, zoom } from './view.ts';

interface Drawn {
  readonly host: HTMLElement;
  readonly id: string;
  readonly marked: readonly Stretch[];
  readonly chart: LiveChart;
}

function start(): void {
  const source = document.getElementById('live-data');
  if (source === null) return;
  const data: LiveData = JSON.parse(source.textContent ?? '');
  const drawn = data.charts.flatMap(({ figure, marked, chart }) => {
    const host = document.querySelector<HTMLElement>(`#${figure} .live`);
    return host === null ? [] : [{ host, id: `${figure}-l`, marked, chart: unpackChart(chart) }];
  });
  const ride = drawn.find((one) => one.chart.kind === 'traces');
  if (ride !== undefined) new Ride(data, drawn, ride, ride.chart as TracesChart);
}

/** The ride as the reader looks at it: which part, how averaged, and which second. */
class Ride {
  private readonly data: LiveData;
  private readonly drawn: readonly Drawn[];
  private readonly ride: Drawn;
  private readonly chart: TracesChart;
  private readonly length: number;
  private readonly tools: HTMLElement;
  private readonly output: HTMLElement;
  private readonly averagings: HTMLSelectElement;
  private within: Stretch;
  private averaging: number | null = null;
  private channels: readonly Channel[];
  private at: number | null = null;
  private dragFrom: number | null = null;

  constructor(data: LiveData, drawn: readonly Drawn[], ride: Drawn, chart: TracesChart) {
    this.data = data;
    this.drawn = drawn;
    this.ride = ride;
    this.chart = chart;
    this.length = chart.primary.length;
    this.within = [0, this.length];
    this.channels = this.readChannels();
    this.tools = ride.host.parentElement!.querySelector<HTMLElement>('.tools')!;
    this.output = this.tools.querySelector<HTMLElement>('output')!;
    this.averagings = this.tools.querySelector('select')!;
    // A page that is gone back to keeps its choice.
    this.averaging = this.chosen();
    this.channels = this.readChannels();
    this.tools.hidden = false;
    for (const { host } of drawn) {
      host.hidden = false;
      for (const still of host.parentElement!.querySelectorAll<HTMLElement>('.wide, .narrow'))
        still.hidden = true;
    }
    this.listen();
    // Draws at once, and again whenever the page becomes wider or narrower.
    const sizes = new ResizeObserver(() => this.draw());
    for (const { host } of drawn) sizes.observe(host);
  }

  private meter = (subject: Subject) => this.data.meters[subject] ?? subject;

  private readChannels(): readonly Channel[] {
    return channelsOf(this.chart, (subject) => this.meter(subject), this.averaging);
  }

  private listen(): void {
    const { host } = this.ride;
    this.tools.addEventListener('click', (event) => this.press(event));
    this.averagings.addEventListener('change', () => this.average());
    host.addEventListener('keydown', (event) => this.key(event));
    host.addEventListener('pointerdown', (event) => this.down(event));
    host.addEventListener('pointermove', (event) => this.move(event));
    host.addEventListener('pointerup', (event) => this.up(event));
    host.addEventListener('pointercancel', () => this.drop());
    host.addEventListener('pointerleave', () => this.point(null));
    host.addEventListener('dblclick', () => this.show([0, this.length]));
    document.addEventListener('click', (event) => this.follow(event));
  }

  /** A link to some seconds of the ride shows them. */
  private follow(event: MouseEvent): void {
    const link = (event.target as Element).closest<HTMLElement>('a[data-from]');
    if (link === null) return;
    event.preventDefault();
    // Who looks at the ride as judged sees it as this finding was.
    if (this.averaging !== null) {
      this.averagings.value = link.dataset.averaged ?? '';
      this.average();
    }
    this.show(around([Number(link.dataset.from), Number(link.dataset.to)], this.length));
    this.ride.host.focus({ preventScroll: true });
    this.ride.host.parentElement!.scrollIntoView({ block: 'start' });
  }

  private press(event: Event): void {
    const what = (event.target as Element).closest<HTMLElement>('[data-do]')?.dataset.do;
    const middle = this.at ?? (this.within[0] + this.within[1]) / 2;
    if (what === 'in' || what === 'out') this.show(zoom(this.within, middle, what === 'in', this.length));
    if (what === 'whole') this.show([0, this.length]);
  }

  private key(event: KeyboardEvent): void {
    const at = this.at ?? this.within[0];
    const far = event.shiftKey ? 10 : 1;
    const moves: Readonly<Record<string, number>> = {
      ArrowLeft: this.at === null ? at : at - far,
      ArrowRight: this.at === null ? at : at + far,
      Home: this.within[0],
      End: this.within[1] - 1,
    };
    const target = moves[event.key];
    if (target !== undefined) this.read(Math.min(this.length - 1, Math.max(0, target)));
    else if (event.key === '+' || event.key === '=') this.show(zoom(this.within, at, true, this.length));
    else if (event.key === '-') this.show(zoom(this.within, at, false, this.length));
    else if (event.key === '0' || event.key === 'Escape') this.show([0, this.length]);
    else return;
    event.preventDefault();
  }

  /** The cursor moved by keys: the view follows it. */
  private read(at: number): void {
    const within = including(this.within, at, this.length);
    if (within[0] !== this.within[0]) this.show(within);
    this.point(at);
  }

  private down(event: PointerEvent): void {
    // A finger reads; it zooms by the buttons, so that it can still scroll the page.
    if (event.button !== 0 || event.pointerType === 'touch') return;
    this.dragFrom = this.second(event);
    this.ride.host.setPointerCapture(event.pointerId);
  }

  private move(event: PointerEvent): void {
    this.point(this.second(event));
  }

  private up(event: PointerEvent): void {
    const from = this.dragFrom;
    this.drop();
    if (from === null) return;
    const to = this.second(event);
    // Less than this is a click.
    if (Math.abs(this.x(from) - this.x(to)) > 6)
      this.show(settle([Math.min(from, to), Math.max(from, to)], this.length));
  }

  private drop(): void {
    this.dragFrom = null;
    this.overlay();
  }

  private show(within: Stretch): void {
    this.within = settle(within, this.length);
    this.draw();
    this.output.textContent = live.showing(this.within);
  }

  private chosen(): number | null {
    return this.averagings.value === '' ? null : Number(this.averagings.value);
  }

  private average(): void {
    this.averaging = this.chosen();
    this.channels = this.readChannels();
    this.draw();
  }

  private point(at: number | null): void {
    this.at = at;
    this.overlay();
    this.output.textContent = at === null ? live.hint : readout(at, readingsAt(this.channels, at));
  }

  private draw(): void {
    const { within, averaging } = this;
    const view = { within, averaging };
    for (const { host, id, marked, chart } of this.drawn) {
      const drawing = picture(chart, { id, marked, meter: this.meter, view }).draw(
        Math.max(280, host.clientWidth),
      );
      const parsed = new DOMParser().parseFromString(drawing.toString(), 'image/svg+xml').documentElement;
      host.replaceChildren(document.importNode(parsed, true));
    }
    this.overlay();
  }

  /** The line under the cursor on every drawing, and what is being dragged across. */
  private overlay(): void {
    for (const { host } of this.drawn) {
      const svg = host.querySelector('svg')!;
      for (const old of svg.querySelectorAll('.cursor')) old.remove();
      if (this.at === null || this.at < this.within[0] || this.at > this.within[1]) continue;
      const x = this.x(this.at, host);
      if (this.dragFrom !== null && host === this.ride.host) {
        const other = this.x(this.dragFrom, host);
        svg.append(
          this.mark('rect', {
            x: Math.min(x, other),
            y: 0,
            width: Math.abs(x - other),
            height: svg.viewBox.baseVal.height,
          }),
        );
      }
      svg.append(
        this.mark('line', { x1: x, x2: x, y1: gutter.title, y2: svg.viewBox.baseVal.height - gutter.axis }),
      );
    }
  }

  private mark(name: 'rect' | 'line', attributes: Readonly<Record<string, number>>): SVGElement {
    const element = document.createElementNS('http://www.w3.org/2000/svg', name);
    element.setAttribute('class', 'cursor');
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
    return element;
  }

  /** Places on the drawing, whose pixels are the page's. */
  private x(at: number, host = this.ride.host): number {
    const [from, to] = this.within;
    const width = Math.max(280, host.clientWidth) - gutter.left - gutter.right;
    return gutter.left + ((at - from) / (to - from)) * width;
  }

  private second(event: PointerEvent): number {
    const { host } = this.ride;
    const [from, to] = this.within;
    const width = host.clientWidth - gutter.left - gutter.right;
    const share = (event.clientX - host.getBoundingClientRect().left - gutter.left) / width;
    return Math.min(to - 1, Math.max(from, Math.round(from + share * (to - from))));
  }
}

start();
