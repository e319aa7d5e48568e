import type { Plan, ReviewAnswer } from './client.js';
import { svg } from './dom.js';
import type { Reading } from './figures.js';

type Point = { x_m: number; y_m: number };

const SEAT_M = 0.46;
const MARGIN_M = 0.32;

/** The vehicle from above, forward being up: seats, loudspeakers, and how long each channel waits. */
export function drawingView(plan: Plan, { result }: ReviewAnswer, { texts, numbers }: Reading): Element {
  const seats = plan.seats.flatMap(({ name, position }) => (position ? [{ name, position }] : []));
  const points = [...seats, ...plan.drivers].map(({ position }) => onPaper(position));
  const [left, right] = span(points.map(({ x }) => x));
  const [top, bottom] = span(points.map(({ y }) => y));
  const [width, height] = [right - left, bottom - top];
  const delays = new Map(result.channels?.map(({ id, delay_ms }) => [id, delay_ms]));
  return svg(
    'svg',
    { class: 'drawing', part: 'drawing', viewBox: `${left} ${top} ${width} ${height}`, role: 'img', 'aria-label': texts.drawing },
    svg('rect', { class: 'cabin', x: left + 0.02, y: top + 0.02, width: width - 0.04, height: height - 0.04, rx: 0.4 }),
    svg('path', { class: 'windscreen', d: `M${left + 0.3} ${top + 0.17}Q${left + width / 2} ${top + 0.05} ${right - 0.3} ${top + 0.17}` }),
    seats.map(({ name, position }) => {
      const { x, y } = onPaper(position);
      const main = name === result.main_seat ? 'seat main' : 'seat';
      return svg('rect', { class: main, x: x - SEAT_M / 2, y: y - SEAT_M / 2, width: SEAT_M, height: SEAT_M, rx: 0.12 });
    }),
    plan.drivers.map(({ position }) => {
      const { x, y } = onPaper(position);
      return svg('circle', { class: 'driver', cx: x, cy: y, r: 0.055 });
    }),
    plan.channels.map((channel) => {
      const delay = delays.get(channel.id);
      const driven = plan.drivers.filter((driver) => drives(channel, driver.id)).map(({ position }) => onPaper(position));
      if (delay === undefined || driven.length === 0) return undefined;
      const { x, y } = middle(driven);
      // Beside a dot, towards the middle; below the middle of several.
      const side = Math.abs(x) >= 0.3 ? Math.sign(x) : driven.length > 1 ? 0 : -1;
      const text = numbers.unit(delay, 'ms');
      const anchor = side === 0 ? 'middle' : side < 0 ? 'start' : 'end';
      return svg('text', { x: x - side * 0.14, y: y + (side === 0 ? 0.24 : 0.05), 'text-anchor': anchor }, text);
    }),
  );
}

function onPaper({ x_m, y_m }: Point) {
  return { x: -y_m, y: -x_m };
}

function span(values: number[]): [number, number] {
  return [Math.min(...values) - MARGIN_M, Math.max(...values) + MARGIN_M];
}

function middle(points: { x: number; y: number }[]) {
  const mean = (values: number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  return { x: mean(points.map(({ x }) => x)), y: mean(points.map(({ y }) => y)) };
}

/** Whether a driver hangs on a channel, on its one network or on a branch of its crossover. */
export function drives({ network, branches = [] }: Pick<Plan['channels'][number], 'network' | 'branches'>, id: string): boolean {
  return [network ?? '', ...branches.map((branch) => branch.network)].some((one) => names(one, id));
}

/** Whether a network names a driver, as its id or as one of its coils: id.1. */
export function names(network: string, id: string): boolean {
  return network.split(/[\s()+|]+/).some((coil) => coil.replace(/\.\d+$/, '') === id);
}
