import type { Fault } from './client.js';
import { h, type Child } from './dom.js';
import { distancesOf, factoryDataOf, seatName, type Field, type Group } from './fields.js';
import type { Numbers } from './numbers.js';
import { packagesFor, Unoffered, type Offer, type Package, type Vehicle } from './offer.js';
import { pictureView } from './picture.js';
import { at, put } from './pointer.js';
import { priceOf } from './prices.js';
import { distance, earsOf, LEAST_M, MOST_M, placed } from './tape.js';
import { fill, type Texts } from './texts.js';

/** How long to wait for a further change. */
const CHOICE_MS = 150;
const TYPING_MS = 700;

/** The unit of fields that are shown and read in the customer's units */
const LENGTH = 'm';

/** What a customer enters: vehicle, package, seat and measurements. */
export class Chooser {
  readonly form = h('form', { part: 'form', novalidate: true, submit: (event) => this.submit(event) });
  private readonly rest = h('div');
  private readonly summary = h('div', { class: 'faults', part: 'faults', tabindex: -1, role: 'group', hidden: true });
  private inputs = new Map<string, HTMLInputElement>();
  /** The text each had at first: one not touched says nothing new, and what it shows is rounded */
  private first = new Map<string, string>();
  /** Those for a distance */
  private tapes = new Set<string>();
  private wantsFocus = false;
  private original: Vehicle;
  private chosen?: Package;
  private seat = 0;

  constructor(
    private readonly offer: Offer,
    private readonly texts: Texts,
    private readonly numbers: Numbers,
    start: { vehicle?: string | null; package?: string | null; fixed?: boolean },
    private readonly changed: (after_ms: number) => void,
  ) {
    const { vehicles } = offer;
    if (!vehicles?.length) throw new Error('It has no vehicles.');
    this.original = named(vehicles, start.vehicle)!;
    this.chosen = named(this.packages, start.package);
    // What cannot be chosen must be what was meant: another package has another price.
    if (start.fixed) {
      mustBe(this.original, start.vehicle, 'of the vehicles');
      mustBe(this.chosen, start.package, `offered for ${this.original.id}`);
    }
    const options = vehicles.map(({ id, vehicle }) => h('option', { value: id, selected: id === this.original.id }, vehicle.name));
    const select = h('select', { id: 'vehicle', part: 'field', change: () => this.take(select.value) }, options);
    this.form.append(
      this.summary,
      h('div', { part: 'vehicle', class: 'vehicle' }, h('label', { for: 'vehicle' }, texts.vehicle), select),
      this.rest,
    );
    this.build();
  }

  /** Vehicle and package as entered, and the fields that cannot be read. */
  read(): { vehicle: Vehicle; package: Package; faults: Fault[] } {
    if (!this.chosen) throw new Unoffered(fill(this.texts.unoffered, { vehicle: this.original.vehicle.name }));
    const vehicle = structuredClone(this.original);
    const faults: Fault[] = [];
    for (const [pointer, input] of this.inputs) {
      const value = this.value(input);
      if (Number.isNaN(value)) {
        faults.push({ pointer, code: '', detail: fill(this.texts.notANumber, { example: this.numbers.field(1.25) }) });
      } else if (this.touched(pointer) && !this.tapes.has(pointer)) {
        put(vehicle, pointer, value);
      }
    }
    for (const index of vehicle.places.keys()) faults.push(...this.measure(vehicle, index));
    // Levels are given for the seat of largest weight.
    const most = Math.max(...vehicle.seats.map(weight));
    if (this.seat !== heaviest(vehicle)) vehicle.seats[this.seat].weight = Math.min(most + 1, 1000);
    return { vehicle, package: this.chosen, faults };
  }

  /** Puts a loudspeaker where the distances that were measured say; those not touched stay as they are. */
  private measure(vehicle: Vehicle, index: number): Fault[] {
    const place = vehicle.places[index];
    const own = (seat: number) => `/places/${index}/position/${seat}`;
    const ears = earsOf(vehicle);
    const touched = ({ seat }: { seat: number }) => this.touched(own(seat));
    if (!ears.some(touched)) return [];
    const measured = ears.map((ear) => {
      const distance_m = touched(ear) ? (this.value(this.inputs.get(own(ear.seat))!) ?? 0) : distance(ear.point, place.position);
      return { pointer: own(ear.seat), from: ear.point, distance_m };
    });
    if (measured.some(({ distance_m }) => Number.isNaN(distance_m))) return [];
    const beyond = measured.filter(({ distance_m }) => distance_m < LEAST_M || distance_m > MOST_M);
    const detail = fill(this.texts.notADistance, { least: this.numbers.length(LEAST_M), most: this.numbers.length(MOST_M) });
    if (beyond.length > 0) return beyond.map(({ pointer }) => ({ pointer, code: '', detail }));
    const position = placed(place.position, measured);
    if (position) place.position = position;
    return position ? [] : [{ pointer: own(ears.find(touched)!.seat), code: '', detail: this.apart(ears) }];
  }

  /** What is wrong; of a length in feet its bounds, which the service says in them. */
  private said({ detail, allowed }: Fault, { dataset: { unit } }: HTMLInputElement): string {
    const [least, most] = (unit === LENGTH && allowed?.match(/[\d.,]+\s?ft/g)) || [];
    return least && most ? fill(this.texts.notADistance, { least, most }) : detail;
  }

  private apart([one, two]: ReturnType<typeof earsOf>): string {
    const [first, second] = [one, two].map(({ seat }) => seatName(this.original, seat, this.texts));
    const ears = fill(this.texts.and, { first, second });
    return fill(this.texts.distancesApart, { ears, apart: this.numbers.length(distance(one.point, two.point)) });
  }

  private value(input: HTMLInputElement): number | undefined {
    const text = input.value.trim();
    if (text === '') return undefined;
    return input.dataset.unit === LENGTH ? this.numbers.parseLength(text) : this.numbers.parse(text);
  }

  private touched(pointer: string): boolean {
    return this.inputs.get(pointer)!.value !== this.first.get(pointer);
  }

  /** Whether any of the faults is at a field. */
  has(faults: Fault[]): boolean {
    return faults.some(({ pointer }) => this.inputOf(pointer));
  }

  /** Shows every fault at its field, and all of them in a summary that leads there. */
  show(faults: Fault[]): string {
    for (const input of this.inputs.values()) this.mark(input, '');
    const lines = faults.flatMap((fault) => {
      const input = this.inputOf(fault.pointer);
      if (!input) return [];
      const detail = this.said(fault, input);
      this.mark(input, detail);
      const text = `${input.dataset.legend}, ${input.dataset.label}: ${detail}`;
      return [h('li', {}, h('button', { type: 'button', class: 'link', click: () => reveal(input) }, text))];
    });
    const count = lines.length === 1 ? this.texts.entry : fill(this.texts.entries, { count: lines.length });
    const heading = fill(this.texts.check, { count });
    const shop = lines.length < faults.length ? [h('p', {}, this.texts.shopFault)] : [];
    this.summary.replaceChildren(h('h2', {}, heading), h('ul', {}, lines), ...shop);
    this.summary.setAttribute('aria-label', heading);
    this.summary.hidden = faults.length === 0;
    // Only who asked for the calculation is taken to the faults, not who is still typing elsewhere.
    if (faults.length > 0 && this.wantsFocus) this.summary.focus();
    if (faults.length > 0) this.wantsFocus = false;
    return heading;
  }

  private get packages(): Package[] {
    return packagesFor(this.original, this.offer);
  }

  private take(id: string): void {
    this.original = named(this.offer.vehicles, id)!;
    this.chosen = named(this.packages, this.chosen?.id);
    this.build();
    this.changed(0);
  }

  private submit(event: Event): void {
    event.preventDefault();
    this.wantsFocus = true;
    this.changed(0);
  }

  private build(): void {
    this.seat = heaviest(this.original);
    this.inputs.clear();
    this.first.clear();
    this.tapes.clear();
    const { original, texts } = this;
    this.rest.replaceChildren(...[pictureView(original.image)].filter((view) => view !== undefined), this.packageChoice());
    if (original.seats.length > 1) this.rest.append(this.seatChoice());
    this.rest.append(
      this.measurements(texts.distances, texts.distancesHint, distancesOf(original, texts)),
      this.measurements(texts.factoryData, texts.factoryDataHint, factoryDataOf(original, texts)),
    );
  }

  private packageChoice(): HTMLElement {
    const choices = this.packages.map((one) =>
      choice('package', one.id, one === this.chosen, this.packageLabel(one), () => {
        this.chosen = one;
        this.changed(CHOICE_MS);
      }),
    );
    return h('fieldset', { part: 'package', class: 'choice' }, h('legend', {}, this.texts.package), choices);
  }

  private packageLabel(one: Package): Child {
    const price = priceOf(one);
    return [
      pictureView(one.image),
      h('span', { class: 'priced' }, h('b', {}, one.name), h('b', {}, price === undefined ? this.texts.priceUnknown : this.numbers.money(price))),
      one.text && h('small', {}, one.text),
    ];
  }

  private seatChoice(): HTMLElement {
    const choices = this.original.seats.map((_, index) =>
      choice('seat', String(index), index === this.seat, [seatName(this.original, index, this.texts)], () => {
        this.seat = index;
        this.changed(CHOICE_MS);
      }),
    );
    return h('fieldset', { part: 'seat', class: 'choice seats' }, h('legend', {}, this.texts.seat), choices);
  }

  private measurements(title: string, hint: string, fieldsets: Group[]): HTMLElement {
    const groups = fieldsets.map(({ legend, fields }) =>
      h(
        'fieldset',
        { class: 'group' },
        h('legend', {}, legend),
        h('div', { class: 'fields' }, fields.map((field) => this.field(field, legend))),
      ),
    );
    return h(
      'details',
      { part: 'measurements', input: () => this.changed(TYPING_MS) },
      h('summary', {}, title),
      h('p', {}, hint),
      groups,
      h('button', { type: 'submit', part: 'button' }, this.texts.calculate),
    );
  }

  private field({ pointer, label, unit, tape_m }: Field, legend: string): HTMLElement {
    const id = `field${pointer.replaceAll('/', '-')}`;
    const value = tape_m ?? at(this.original, pointer);
    const length = unit === LENGTH;
    const input = h('input', {
      id,
      part: 'field',
      inputmode: length && unit !== this.numbers.lengthUnit ? undefined : 'decimal', // The keyboard for decimals lacks signs of feet and inches.
      autocomplete: 'off',
      value: typeof value !== 'number' ? '' : length ? this.numbers.lengthField(value) : this.numbers.field(value),
      'data-unit': unit,
      'aria-describedby': `${id}-fault`,
      'data-label': label,
      'data-legend': legend,
    });
    this.inputs.set(pointer, input);
    this.first.set(pointer, input.value);
    if (tape_m !== undefined) this.tapes.add(pointer);
    return h(
      'div',
      { class: 'field' },
      h('label', { for: id }, label, h('small', {}, length ? this.numbers.lengthUnit : unit)),
      input,
      h('p', { id: `${id}-fault`, class: 'fault', part: 'fault' }),
    );
  }

  private inputOf(pointer: string): HTMLInputElement | undefined {
    const below = [...this.inputs].find(([own]) => own.startsWith(`${pointer}/`));
    return this.inputs.get(pointer) ?? below?.[1];
  }

  private mark(input: HTMLInputElement, fault: string): void {
    input.setAttribute('aria-invalid', String(fault !== ''));
    input.parentElement!.querySelector('.fault')!.textContent = fault;
  }
}

function choice(group: string, value: string, checked: boolean, label: Child, taken: () => void): HTMLElement {
  return h('label', {}, h('input', { type: 'radio', name: group, value, checked, change: taken }), h('span', {}, label));
}

function reveal(input: HTMLInputElement): void {
  input.closest('details')!.open = true;
  input.focus();
}

function named<T extends { id: string }>(items: T[], id?: string | null): T | undefined {
  return items.find((item) => item.id === id) ?? items[0];
}

function mustBe(found: { id: string } | undefined, id: string | null | undefined, what: string): void {
  if (typeof id === 'string' && found?.id !== id) throw new Error(`${id} is not ${what}.`);
}

function weight({ weight = 1 }: Vehicle['seats'][number]): number {
  return weight;
}

function heaviest({ seats }: Vehicle): number {
  return seats.map(weight).indexOf(Math.max(...seats.map(weight)));
}
