import type { components } from './contract.js';
import type { Comparison, Plan } from './client.js';
import { Names } from './names.js';
import { checked, type Picture } from './picture.js';
import { fill, type Texts } from './texts.js';

type Schemas = components['schemas'];
type Compared = Schemas['ComparedPosition'];
type Side = Schemas['Driver'];
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
  /** Largest clean sine of the factory head unit, V RMS */
  factory_voltage_v?: number;
  payload_left_g?: number;
  image?: Picture;
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
export type Part = Schemas['PlannedPart'] & { compared?: Partial<Side> & { f3_hz?: number }; image?: Picture };

/** A package: a plan without its vehicle, with drivers that name places. */
export interface Package
  extends Pick<Plan, 'crossovers' | 'processor' | 'signal' | 'factory_signal' | 'programme' | 'supply' | 'target'>,
    Pick<Comparison, 'additions'> {
  id: string;
  name: string;
  text?: string;
  image?: Picture;
  new_parts: Part[];
  drivers: Driver[];
  amplifiers: Amplifier[];
  channels: Channel[];
}

export interface Driver extends Pick<Schemas['PlacedDriver'], 'id' | 'part' | 'role' | 'mounted_in' | 'enclosure'> {
  place: string;
  /** What part of the range it plays */
  range: Compared['band'];
}

/** Outputs without rails and ratings are those of the factory head unit: they give its voltage. */
export type Amplifier = Schemas['PlannedAmplifier'] & {
  at?: Addition['at'];
  /** It is in the vehicle already: it neither adds mass nor costs anything. */
  stays?: boolean;
};

export type Channel = Schemas['PlannedChannel'] & { name?: string };

/** Packages all of whose places the vehicle has; one without drivers is told of when it is chosen. */
export function packagesFor(vehicle: Vehicle, offer: Offer): Package[] {
  const places = new Set(vehicle.places.map((place) => place.id));
  return offer.packages.filter(({ drivers = [] }) => drivers.every((driver) => places.has(driver.place)));
}

/** Why there is nothing to show, in words for the customer. */
export class Unoffered extends Error {}

/** Names a reader knows for the ids that findings speak of. */
export function namesOf(vehicle: Vehicle, chosen: Package, texts: Texts): Names {
  const drivers = chosen.drivers.map(({ id, place }) => ({ id, name: placeName(placeOf(vehicle, place), texts) }));
  return new Names({ ...chosen, factory_parts: vehicle.factory_parts, drivers }, texts);
}

export function placeName({ name, side }: Place, texts: Texts): string {
  return side ? fill(texts[side], { name }) : name;
}

/** Every picture of an offer must be one that can be shown; what is wrong with one is thrown. */
export function checkPictures({ vehicles, packages }: Offer): void {
  const parts = packages.flatMap(({ new_parts = [] }) => new_parts);
  for (const { image } of [...vehicles, ...packages, ...parts]) if (image) checked(image);
}

export function placeOf(vehicle: Vehicle, id: string): Place {
  const place = vehicle.places.find((one) => one.id === id);
  if (!place) throw new Error(`${vehicle.vehicle.name} has no place ${id}.`);
  return place;
}

export function known<K extends 'new_parts' | 'amplifiers' | 'channels'>(chosen: Package, list: K, id: string): Package[K][number] {
  const item = chosen[list].find((one) => one.id === id);
  if (!item) throw new Error(`The package ${chosen.id} has no ${id} among its ${list}.`);
  return item;
}
