import { at } from './pointer.js';
import { placeName, type Vehicle } from './offer.js';
import { nameOf } from './names.js';
import { distance, earsOf } from './tape.js';
import { fill, type Texts } from './texts.js';

export interface Field {
  /** Where its value stands in the vehicle */
  pointer: string;
  label: string;
  unit: string;
  /** How far it is, if it is a distance to a loudspeaker */
  tape_m?: number;
}

export interface Group {
  legend: string;
  fields: Field[];
}

/** What a customer can take with a tape. */
export function distancesOf(vehicle: Vehicle, texts: Texts): Group[] {
  const ears = earsOf(vehicle);
  return given(vehicle, [
    { legend: texts.cabin, fields: [{ pointer: '/vehicle/cabin/length_m', label: texts.cabinLength, unit: 'm' }] },
    ...vehicle.places.map((place, index) => ({
      legend: fill(texts.placeNamed, { name: placeName(place, texts) }),
      fields: ears.map(({ seat, point }) => ({
        pointer: `/places/${index}/position/${seat}`,
        label: fill(texts.earOf, { seat: seatName(vehicle, seat, texts) }),
        unit: 'm',
        tape_m: distance(point, place.position),
      })),
    })),
  ]);
}

export function seatName({ seats }: Vehicle, index: number, texts: Texts): string {
  return seats[index].name ?? fill(texts.seatNumbered, { number: index + 1 });
}

/** What somebody with instruments may have measured better than the shop. */
export function factoryDataOf(vehicle: Vehicle, texts: Texts): Group[] {
  return given(vehicle, [
    {
      legend: texts.cabin,
      fields: [
        { pointer: '/vehicle/road_noise_dba', label: texts.roadNoise, unit: 'dBA' },
        { pointer: '/factory_voltage_v', label: texts.radioVoltage, unit: 'V' },
      ],
    },
    ...vehicle.factory_parts.map((part, index) => ({
      legend: fill(texts.factoryNamed, { name: nameOf(part, index, 'factory_parts', texts) }),
      fields: [
        { pointer: `/factory_parts/${index}/driver/rated_ohm`, label: texts.impedance, unit: 'Ω' },
        { pointer: `/factory_parts/${index}/driver/sensitivity/level_db_spl`, label: texts.sensitivity, unit: 'dB SPL' },
        { pointer: `/factory_parts/${index}/driver/continuous_power_w`, label: texts.power, unit: 'W' },
        { pointer: `/factory_parts/${index}/driver/mass_g`, label: texts.mass, unit: 'g' },
      ],
    })),
  ]);
}

/** A value can be given where what holds it is there. */
function given(vehicle: Vehicle, groups: Group[]): Group[] {
  const open = ({ pointer }: Field) => at(vehicle, pointer.slice(0, pointer.lastIndexOf('/'))) !== undefined;
  return groups
    .map(({ legend, fields }) => ({ legend, fields: fields.filter(open) }))
    .filter(({ fields }) => fields.length > 0);
}
