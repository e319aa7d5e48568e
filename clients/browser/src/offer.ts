import type { components } from './contract.js';
import type { Comparison, Plan } from './client.js';
import type { Origins } from './pointer.js';

type Schemas = components['schemas'];
type Compared = Schemas['ComparedPosition'];
type Side = Schemas['ComparedDriver'];
type Addition = Schemas['DriverComparisonRequestAddedItem'];

/** What a shop offers: its vehicles and its packages. */
export interface Offer {
  /** ISO 4217 */
  currency?: string;
  vehicles: Vehicle[];
  packages: Package[];
}

/** A vehicle before the work: what stands in the contract's plan, and its places by name. */
export interface Vehicle extends Pick<Plan, 'vehicle' | 'seats'> {
  id: string;
  factory_parts: Part[];
  places: Place[];
  /** Largest clean sine of the factory head unit at each loudspeaker, V RMS */
  factory_voltage_v?: number;
  payload_left_g?: number;
}

/** A place of a loudspeaker. Two places of one name are the left and right one of a pair. */
export interface Place extends Pick<Compared, 'name' | 'zone' | 'at'> {
  id: string;
  side?: 'left' | 'right';
  position: Schemas['Position'];
  /** Id of the factory part in it; left out where there is nothing */
  factory_part?: string;
}

/** A part of the contract's plan, with what only a comparison asks for. */
export type Part = Schemas['VehiclePlanPart'] & { compared?: Partial<Side> };

/** A package: a plan without its vehicle, with drivers that name places. */
export interface Package
  extends Pick<Plan, 'crossovers' | 'processor' | 'signal' | 'programme'>,
    Pick<Comparison, 'additions'> {
  id: string;
  name: string;
  text?: string;
  new_parts: Part[];
  drivers: Driver[];
  amplifiers: Amplifier[];
  channels: Channel[];
}

export interface Driver extends Pick<Schemas['VehiclePlanDriver'], 'id' | 'part' | 'band'> {
  place: string;
  /** What part of the range it plays */
  range: Compared['band'];
  /** What drives it from now on; without it the factory head unit does */
  amplifier?: Compared['amplifier_after'];
}

export type Amplifier = Schemas['VehiclePlanAmplifier'] & {
  at?: Addition['at'];
  /** It is in the vehicle already: it neither adds mass nor costs anything. */
  stays?: boolean;
};

export type Channel = Schemas['VehiclePlanChannel'] & { name?: string };

/** A request, and where its pieces come from: `/seats/0` of the vehicle, `package:/drivers/0`. */
export interface Composed<Q> {
  request: Q;
  origins: Origins;
}

/** Packages all of whose places the vehicle has. */
export function packagesFor(vehicle: Vehicle, offer: Offer): Package[] {
  const places = new Set(vehicle.places.map((place) => place.id));
  return offer.packages.filter((chosen) => chosen.drivers.every((driver) => places.has(driver.place)));
}

/** What plan-review is asked. */
export function planOf(vehicle: Vehicle, chosen: Package): Composed<Plan> {
  const { id, name, text, additions, new_parts, drivers, amplifiers, channels, ...rest } = chosen;
  const origins: Origins = new Map(
    ['new_parts', 'drivers', 'amplifiers', 'channels', ...Object.keys(rest)].map((key) => [`/${key}`, `package:/${key}`]),
  );
  const request: Plan = {
    vehicle: vehicle.vehicle,
    seats: vehicle.seats,
    factory_parts: vehicle.factory_parts.map(({ compared, ...part }) => part),
    new_parts: new_parts.map(({ compared, ...part }) => part),
    drivers: drivers.map(({ place, range, amplifier, ...driver }, index) => {
      const there = placeOf(vehicle, place);
      origins.set(`/drivers/${index}/position`, `/places/${vehicle.places.indexOf(there)}/position`);
      return { ...driver, replaces: there.factory_part, position: there.position };
    }),
    amplifiers: amplifiers.map(({ at, stays, ...amplifier }) => amplifier),
    channels: channels.map(({ name, ...channel }) => channel),
    ...rest,
  };
  return { request, origins };
}

/** What driver-comparison is asked: equal drivers in places of one name make one position. */
export function comparisonOf(vehicle: Vehicle, chosen: Package, currency?: string): Composed<Comparison> {
  const origins: Origins = new Map();
  const positions = new Map<string, Compared>();
  for (const driver of chosen.drivers) {
    const { name, zone, at, factory_part } = placeOf(vehicle, driver.place);
    const key = [name, zone, at, factory_part, driver.part, driver.range].join('|');
    const same = positions.get(key);
    if (same) {
      same.driver_count = (same.driver_count ?? 1) + 1;
      continue;
    }
    const before = vehicle.factory_parts.findIndex((part) => part.id === factory_part);
    const after = chosen.new_parts.findIndex((part) => part.id === driver.part);
    if (after < 0) throw new Error(`The package ${chosen.id} has no part ${driver.part}.`);
    const pointer = `/positions/${positions.size}`;
    origins.set(`${pointer}/factory`, `/factory_parts/${before}`);
    origins.set(`${pointer}/replacement`, `package:/new_parts/${after}`);
    origins.set(`${pointer}/amplifier_before/voltage_v`, '/factory_voltage_v');
    const taken = [...positions.values()].some((position) => position.name === name);
    positions.set(key, {
      name: taken ? `${name}, ${driver.range.replace('_', ' ')}` : name,
      zone,
      at,
      band: driver.range,
      driver_count: 1,
      factory: before < 0 ? undefined : sideOf(vehicle.factory_parts[before]),
      replacement: sideOf(chosen.new_parts[after]),
      amplifier_before: before < 0 || !vehicle.factory_voltage_v ? undefined : { voltage_v: vehicle.factory_voltage_v },
      amplifier_after: driver.amplifier,
    });
  }
  const amplifiers = chosen.amplifiers
    .filter((amplifier) => !amplifier.stays)
    .map(({ id, name, at, mass_g, price }): Addition => ({ name: name ?? id, at, mass_g, price }));
  const request: Comparison = {
    currency,
    payload_left_g: vehicle.payload_left_g,
    temperature_c: vehicle.vehicle.temperature_c,
    positions: [...positions.values()],
    additions: [...amplifiers, ...(chosen.additions ?? [])],
  };
  return { request, origins };
}

/** Names a reader knows for the ids that findings speak of. */
export function namesOf(vehicle: Vehicle, chosen: Package): Map<string, string> {
  const names = new Map(chosen.drivers.map(({ id, place }) => [id, placeName(placeOf(vehicle, place))]));
  // Ids are unique within their kind only; a channel says most.
  for (const { id, name } of [...vehicle.factory_parts, ...chosen.new_parts, ...chosen.amplifiers, ...chosen.channels]) {
    names.set(id, name ?? spoken(id));
  }
  return names;
}

export function placeName({ name, side }: Place): string {
  return side ? `${name}, ${side}` : name;
}

/** An id as words: front_left becomes Front left. */
export function spoken(id: string): string {
  const words = id.replace(/[_-]+/g, ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function placeOf(vehicle: Vehicle, id: string): Place {
  const place = vehicle.places.find((one) => one.id === id);
  if (!place) throw new Error(`${vehicle.vehicle.name} has no place ${id}.`);
  return place;
}

function sideOf(part: Part): Side {
  const { name, rated_ohm, sensitivity, continuous_power_w, sd_cm2, xmax_mm, mass_g, price, impedance, compared } = part;
  const fs_hz = impedance?.fs_hz;
  return { name, rated_ohm, sensitivity, continuous_power_w, sd_cm2, xmax_mm, mass_g, price, fs_hz, ...compared };
}
