import type { components } from './contract.js';
import type { Comparison, ReviewAnswer } from './client.js';
import { known, placeOf, type Driver, type Package, type Part, type Vehicle } from './offer.js';
import { nameOf } from './names.js';
import type { Picture } from './picture.js';
import type { Composed, Origins } from './pointer.js';
import { english, type Texts } from './texts.js';

type Schemas = components['schemas'];
type Position = Schemas['ComparedPosition'];
type Review = Pick<ReviewAnswer['result'], 'drivers'>;

/** What driver-comparison is asked: equal drivers in places of one name make one position. */
export function comparisonOf(
  vehicle: Vehicle,
  chosen: Package,
  review: Review,
  currency?: string,
  texts: Texts = english,
): Composed<Comparison> & { pictures: (Picture | undefined)[] } {
  const origins: Origins = new Map();
  const positions = new Map<string, Position>();
  const pictures: (Picture | undefined)[] = [];
  for (const driver of chosen.drivers) {
    const { name, zone, at, factory_part } = placeOf(vehicle, driver.place);
    const key = [name, zone, at, factory_part, driver.part, driver.range].join('|');
    const position = positionOf(vehicle, chosen, driver, review);
    const same = positions.get(key);
    if (same) {
      join(same, position);
      continue;
    }
    const taken = [...positions.values()].some((other) => other.name === name);
    if (taken) position.name = `${name}, ${texts[driver.range]}`;
    const pointer = `/positions/${positions.size}`;
    origins.set(`${pointer}/factory`, `/factory_parts/${vehicle.factory_parts.findIndex((part) => part.id === factory_part)}`);
    origins.set(`${pointer}/replacement`, `package:/new_parts/${chosen.new_parts.findIndex((part) => part.id === driver.part)}`);
    origins.set(`${pointer}/amplifier_before/voltage_v`, '/factory_voltage_v');
    positions.set(key, position);
    pictures.push(known(chosen, 'new_parts', driver.part).image);
  }
  const request: Comparison = {
    currency,
    payload_left_g: vehicle.payload_left_g,
    temperature_c: vehicle.vehicle.temperature_c,
    positions: [...positions.values()],
    additions: additionsOf(chosen, texts),
  };
  return { request, origins, pictures };
}

function positionOf(vehicle: Vehicle, chosen: Package, driver: Driver, review: Review): Position {
  const { name, zone, at, factory_part } = placeOf(vehicle, driver.place);
  const factory = vehicle.factory_parts.find(({ id }) => id === factory_part);
  const replacement = known(chosen, 'new_parts', driver.part);
  const voltage_v = vehicle.factory_voltage_v;
  const amplifier_before = factory && voltage_v !== undefined ? { voltage_v } : undefined;
  return {
    name,
    zone,
    at,
    band: driver.range,
    driver_count: 1,
    factory: factory && sideOf(factory),
    replacement: sideOf(replacement),
    factory_f3_hz: factory?.compared?.f3_hz,
    replacement_f3_hz: replacement.compared?.f3_hz,
    amplifier_before,
    amplifier_after: amplifierOf(chosen, driver, review, amplifier_before),
  };
}

/** Two drivers of one position count as the one that gets less power. */
function join(position: Position, other: Position): void {
  position.driver_count = (position.driver_count ?? 1) + 1;
  const [one, two] = [position.amplifier_after?.power_w, other.amplifier_after?.power_w];
  if (one !== undefined && two !== undefined && two < one) position.amplifier_after = other.amplifier_after;
}

/** What the plan's amplifiers give a driver; what stays goes on as before. */
function amplifierOf(chosen: Package, driver: Driver, { drivers }: Review, before: Position['amplifier_before']) {
  const driven = drivers?.find(({ id }) => id === driver.id);
  if (!driven) return undefined;
  const channel = known(chosen, 'channels', driven.channel!);
  const stays = known(chosen, 'amplifiers', channel.amplifier).stays;
  return stays && before ? undefined : { power_w: driven.clean_power_w };
}

function additionsOf({ amplifiers, additions = [] }: Package, texts: Texts): Comparison['additions'] {
  const bought = amplifiers.flatMap((amplifier, index) => {
    const { at, mass_g, price, stays } = amplifier;
    return stays ? [] : [{ name: nameOf(amplifier, index, 'amplifiers', texts), at, mass_g, price }];
  });
  return [...bought, ...additions];
}

function sideOf({ driver, compared }: Part): Schemas['Driver'] {
  const { name, rated_ohm, sensitivity, continuous_power_w, sd_cm2, xmax_mm, mass_g, price, fs_hz } = driver;
  const { f3_hz, ...stated } = compared ?? {};
  return { name, rated_ohm, sensitivity, continuous_power_w, sd_cm2, xmax_mm, mass_g, price, fs_hz, ...stated };
}
