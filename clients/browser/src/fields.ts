import { at } from './pointer.js';
import { placeName, type Vehicle } from './offer.js';
import { nameOf } from './names.js';
import { fill, type Texts } from './texts.js';

export interface Field {
  /** Where its value stands in the vehicle */
  pointer: string;
  label: string;
  unit: string;
}

export interface Group {
  legend: string;
  fields: Field[];
}

/** What a customer may have measured better than the shop. */
export function groupsOf(vehicle: Vehicle, texts: Texts): Group[] {
  const position = (pointer: string): Field[] => [
    { pointer: `${pointer}/x_m`, label: texts.forward, unit: 'm' },
    { pointer: `${pointer}/y_m`, label: texts.left, unit: 'm' },
    { pointer: `${pointer}/z_m`, label: texts.up, unit: 'm' },
  ];
  const groups: Group[] = [
    {
      legend: texts.cabin,
      fields: [
        { pointer: '/vehicle/cabin/length_m', label: texts.cabinLength, unit: 'm' },
        { pointer: '/vehicle/road_noise_dba', label: texts.roadNoise, unit: 'dBA' },
        { pointer: '/factory_voltage_v', label: texts.radioVoltage, unit: 'V' },
      ],
    },
    ...vehicle.seats.map(({ name }, index) => ({
      legend: fill(texts.seatNamed, { name: name ?? index + 1 }),
      fields: position(`/seats/${index}/position`),
    })),
    ...vehicle.places.map((place, index) => ({
      legend: fill(texts.placeNamed, { name: placeName(place) }),
      fields: position(`/places/${index}/position`),
    })),
    ...vehicle.factory_parts.map((part, index) => ({
      legend: fill(texts.factoryNamed, { name: nameOf(part, index, 'factory_parts', texts) }),
      fields: [
        { pointer: `/factory_parts/${index}/driver/rated_ohm`, label: texts.impedance, unit: 'Ω' },
        { pointer: `/factory_parts/${index}/driver/sensitivity/level_db_spl`, label: texts.sensitivity, unit: 'dB SPL' },
        { pointer: `/factory_parts/${index}/driver/continuous_power_w`, label: texts.power, unit: 'W' },
        { pointer: `/factory_parts/${index}/driver/mass_g`, label: texts.mass, unit: 'g' },
      ],
    })),
  ];
  // A value can be given where what holds it is there: ears instead of a position have no field.
  const open = ({ pointer }: Field) => at(vehicle, pointer.slice(0, pointer.lastIndexOf('/'))) !== undefined;
  return groups
    .map(({ legend, fields }) => ({ legend, fields: fields.filter(open) }))
    .filter(({ fields }) => fields.length > 0);
}
