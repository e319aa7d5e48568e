import type { Plan } from './client.js';
import { fill, type Texts } from './texts.js';

interface Named {
  id?: string;
  name?: string;
  driver?: { name?: string };
}

const LISTS = ['drivers', 'factory_parts', 'new_parts', 'amplifiers', 'channels'] as const;
type List = (typeof LISTS)[number];

/** The lists of a plan whose items findings speak of by their ids. */
export type Lists = Partial<Record<List, Named[]>>;

const NUMBERED = {
  drivers: 'driverNumbered',
  factory_parts: 'factoryNumbered',
  new_parts: 'partNumbered',
  amplifiers: 'amplifierNumbered',
  channels: 'channelNumbered',
} as const;

/** What an item of a plan calls an item of another list. */
const REFERENCES: Record<string, Record<string, List>> = {
  drivers: { id: 'drivers', part: 'new_parts', replaces: 'factory_parts' },
  factory_parts: { id: 'factory_parts' },
  new_parts: { id: 'new_parts' },
  amplifiers: { id: 'amplifiers' },
  channels: { id: 'channels', amplifier: 'amplifiers' },
  crossovers: { lower: 'channels', upper: 'channels' },
  settings: { channel: 'channels' },
  measured: { channel: 'channels' },
};

const MARK = /Zid(\d+)Z/g;

const FIELD = /\b(?:[a-z]\w*\.)*[a-z][a-z0-9]*(?:_[a-z0-9]+)+\b|\b(?:factory|replacement)\.[a-z]+\b/g;
const UNIT = /_(?:w|v|a|hz|mm2?|cm2|m|g|l|ohm|db|db_spl|dba|ms|s|h|c|mh|tm)$/;

/**
 * Names a reader knows for the ids of a plan. An id such as main is a word of sentences as well, so
 * the service is asked with marks in the place of ids: what it says of them can be nothing else.
 */
export class Names {
  private readonly items: { id: string; name: string }[] = [];
  private readonly marks = new Map<string, string>();

  constructor(
    lists: Lists,
    private readonly texts: Texts,
  ) {
    for (const list of LISTS) {
      (lists[list] ?? []).forEach((item, index) => {
        const { id } = item;
        if (id === undefined || this.marks.has(`${list}/${id}`)) return;
        this.marks.set(`${list}/${id}`, `Zid${this.items.length}Z`);
        this.items.push({ id, name: nameOf(item, index, list, texts) });
      });
    }
  }

  /** The same plan with marks in the place of ids; what names nothing known stays. */
  marked(plan: Plan): Plan {
    const marked = structuredClone(plan) as unknown as Record<string, Record<string, unknown>[] | undefined>;
    for (const [list, references] of Object.entries(REFERENCES)) {
      for (const item of marked[list] ?? []) {
        for (const [field, among] of Object.entries(references)) {
          if (field in item) item[field] = this.marks.get(`${among}/${item[field]}`) ?? item[field];
        }
      }
    }
    for (const channel of (marked.channels ?? []) as unknown as Plan['channels']) {
      for (const wired of [channel, ...(channel.branches ?? [])]) {
        wired.network &&= wired.network.replace(/[A-Za-z][\w-]*/g, (id) => this.marks.get(`drivers/${id}`) ?? id);
      }
    }
    return marked as unknown as Plan;
  }

  /** An answer to the marked plan as if it had been asked with the ids. */
  restored<A>(answer: A): A {
    const id = (mark: string, number: string) => JSON.stringify(this.items[Number(number)]?.id ?? mark).slice(1, -1);
    return JSON.parse(JSON.stringify(answer).replace(MARK, id)) as A;
  }

  /** A sentence of the service with names for marks, and words for fields. */
  in(text: string): string {
    return text
      .replace(FIELD, (path) => worded(path, this.texts))
      .replace(/Zid(\d+)Z\.(\d+)/g, (_, item: string, number: string) => fill(this.texts.coil, { name: `Zid${item}Z`, number }))
      .replace(MARK, (mark: string, number: string) => this.items[Number(number)]?.name ?? mark);
  }
}

/** A field of the contract as words: factory.peak_power_w becomes peak power of the factory part. */
function worded(path: string, { fields, fieldOfFactory, fieldOfReplacement }: Texts): string {
  const steps = path.split('.');
  const last = steps.pop()!;
  const field = fields[last] ?? last.replace(UNIT, '').replaceAll('_', ' ');
  const side = { factory: fieldOfFactory, replacement: fieldOfReplacement }[steps.at(-1) ?? ''];
  return side ? fill(side, { field }) : field;
}

/** What a reader calls an item: by its name, by an id that says something, or by its number. */
export function nameOf({ id = '', name, driver }: Named, index: number, list: List, texts: Texts): string {
  return name ?? driver?.name ?? spoken(id) ?? fill(texts[NUMBERED[list]], { number: index + 1 });
}

/** An id made of words, as words: front_left becomes Front left. Others, such as fl, say nothing. */
export function spoken(id: string): string | undefined {
  const words = id.split(/[_-]+/);
  if (!words.some(isWord) || !words.every((word) => isWord(word) || /^\d+$/.test(word))) return undefined;
  const text = words.join(' ');
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function isWord(text: string): boolean {
  return /^[a-z]{3,}$/i.test(text);
}
