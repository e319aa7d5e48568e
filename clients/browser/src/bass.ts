import type { ComparisonAnswer, ReviewAnswer } from './client.js';
import { figure, type Reading } from './figures.js';
import { fill } from './texts.js';

/** Third octaves that only bass fills: mid-bands from 20 to 63 Hz (IEC 61260-1). */
const BASS_HZ = [19, 64] as const;

/** What the lowest octaves gain: how far they reach now, and how loud they are at the seat. */
export function bassFigure(compared: ComparisonAnswer, review: ReviewAnswer, reading: Reading) {
  const { texts, numbers } = reading;
  const reach = reachOf(compared);
  if (!reach) return undefined;
  const hertz = (value: number) => numbers.unit(value, 'Hz');
  const level = bassLevel(review);
  return figure(
    texts.bass,
    bassGain(compared, reading),
    fill(texts.bassReach, { before: hertz(reach.before), after: hertz(reach.after) }),
    level === undefined
      ? undefined
      : fill(texts.bassLevel, { level: numbers.unit(level, 'dB'), from: numbers.number(20), to: hertz(63) }),
  );
}

/** How much lower the vehicle plays than it does now. */
export function bassGain(compared: ComparisonAnswer, reading: Reading): string | undefined {
  const reach = reachOf(compared);
  return reach && octaves(Math.log2(reach.before / reach.after), reading);
}

/** Its lowest useful frequencies, Hz; before it may have none. */
function reachOf({ result }: ComparisonAnswer) {
  const { lowest_useful_before_hz: before, lowest_useful_after_hz: after } = result.totals ?? {};
  return before !== undefined && after !== undefined ? { before, after } : undefined;
}

/** Less is not shown, octaves. */
const NO_DIFFERENCE = 0.05;

/** How much lower something plays, never with a sign. */
export function octaves(lower: number, { texts, numbers }: Reading): string {
  if (Math.abs(lower) < NO_DIFFERENCE) return texts.asLow;
  return fill(lower >= 0 ? texts.octavesLower : texts.octavesHigher, { value: numbers.bare(Math.abs(lower), 'octaves') });
}

/** Powers of the bands add: 10·lg Σ 10^(L/10). */
export function bassLevel({ result: { bands_hz = [], seats = [], main_seat } }: ReviewAnswer): number | undefined {
  const bands = seats.find(({ name }) => name === main_seat)?.bands_db_spl ?? [];
  const [from, to] = BASS_HZ;
  const powers = bands.filter((_, index) => bands_hz[index] > from && bands_hz[index] < to).map((level) => 10 ** (level / 10));
  return powers.length === 0 ? undefined : 10 * Math.log10(powers.reduce((sum, power) => sum + power));
}
