import type { Package } from './offer.js';

/** The contract has at most four decimals of a price: as whole numbers of these, sums are exact. */
const PARTS = 10_000;

/** What a package costs in all, as the service adds it up; nothing where a price is not known. */
export function priceOf({ new_parts = [], drivers = [], amplifiers = [], additions = [] }: Package): number | undefined {
  return sum([
    ...drivers.map(({ part }) => new_parts.find(({ id }) => id === part)?.driver.price),
    ...amplifiers.filter(({ stays }) => !stays).map(({ price }) => price),
    ...additions.map(({ price }) => price),
  ]);
}

function sum(prices: (number | undefined)[]): number | undefined {
  const whole = prices.map((price) => Math.round((price ?? NaN) * PARTS)).reduce((total, price) => total + price, 0);
  return Number.isNaN(whole) ? undefined : whole / PARTS;
}
