import type { components } from './contract.js';
import type { Plan } from './client.js';
import { placeOf, type Package, type Part, type Vehicle } from './offer.js';
import type { Composed, Origins } from './pointer.js';

const LISTS = ['new_parts', 'drivers', 'amplifiers', 'channels'] as const;

/** What is in the vehicle already neither adds mass nor costs anything. */
const COSTS_NOTHING = { mass_g: 0, price: 0 };

/** What plan-review is asked. */
export function planOf(vehicle: Vehicle, chosen: Package): Composed<Plan> {
  for (const list of LISTS) if (!chosen[list]) throw new Error(`The package ${chosen.id} has no ${list}.`);
  const { id, name, text, image, additions, new_parts, drivers, amplifiers, channels, ...rest } = chosen;
  const origins: Origins = new Map(
    [...LISTS, ...Object.keys(rest)].map((key) => [`/${key}`, `package:/${key}`]),
  );
  origins.set('/extras', 'package:/additions');
  const request: Plan = {
    vehicle: vehicle.vehicle,
    seats: vehicle.seats,
    factory_parts: vehicle.factory_parts.map(bare),
    new_parts: new_parts.map(bare),
    drivers: drivers.map(({ place, range, ...driver }, index) => {
      const there = placeOf(vehicle, place);
      origins.set(`/drivers/${index}/position`, `/places/${vehicle.places.indexOf(there)}/position`);
      return { ...driver, replaces: there.factory_part, position: there.position };
    }),
    amplifiers: amplifiers.map(({ at, stays, outputs, ...amplifier }, index) => ({
      ...(stays && COSTS_NOTHING),
      ...amplifier,
      outputs: outputs.map((output, place) => {
        if (output.rails || output.ratings) return output;
        origins.set(`/amplifiers/${index}/outputs/${place}/rails/rail_v`, '/factory_voltage_v');
        return { ...output, rails: railsOf(vehicle) };
      }),
    })),
    channels: channels.map(({ name, ...channel }) => channel),
    extras: (additions ?? []).map(({ name, mass_g, price }) => ({ name, mass_g, price })),
    ...rest,
  };
  return { request, origins };
}

/** A part as the contract has it. */
function bare({ compared, image, ...part }: Part): Plan['new_parts'][number] {
  return part;
}

/** The factory head unit swings as far as its clean sine does; it stands between the poles of the supply. */
function railsOf({ factory_voltage_v }: Vehicle): components['schemas']['Rails'] {
  return { rail_v: factory_voltage_v! * Math.SQRT2, drop_v: 0, supply_v: 13.8, kind: 'single_supply_bridge' };
}
