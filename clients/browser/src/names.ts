interface Named {
  id?: string;
  name?: string;
}

/** The lists of a plan whose items findings speak of by their ids. */
export interface Lists {
  drivers?: Named[];
  factory_parts?: Named[];
  new_parts?: Named[];
  amplifiers?: Named[];
  channels?: Named[];
}

/** The service's sentences name fields to whom fills them in; a customer reads words. */
const FIELDS = {
  sd_cm2: 'the cone area',
  xmax_mm: 'the travel',
  vas_l: 'the compliance volume',
  re_ohm: 'its DC resistance',
  le_exponent: 'the exponent of its rise',
  continuous_power_w: 'the power it bears for long',
};

/** Names a reader knows for the ids that findings speak of. */
export class Names {
  private readonly known = new Map<string, string>(Object.entries(FIELDS));

  /** Ids are unique within their list only: where the list is not known, the last one counts. */
  constructor({ drivers, factory_parts, new_parts, amplifiers, channels }: Lists = {}) {
    const add = (list: keyof Lists, items: Named[] = []) => {
      for (const { id = '', name } of items) this.known.set(id, name ?? spoken(id)).set(`${list}/${id}`, name ?? spoken(id));
    };
    add('drivers', drivers);
    add('factory_parts', factory_parts);
    // What is said of all new parts is said of the amplifiers as well.
    add('new_parts', amplifiers);
    add('new_parts', new_parts);
    add('amplifiers', amplifiers);
    add('channels', channels);
  }

  /** The name for an id in a finding, whose pointer may say in which list it is. */
  of(id: string, pointer = ''): string {
    return this.find(id, pointer) ?? spoken(id);
  }

  /**
   * A sentence with names for ids. A single word such as main is an id for sure where the sentence
   * begins with it, in small letters, or where it stands in a list of nothing but ids.
   */
  in(text: string, pointer = ''): string {
    return text
      .replace(/^[a-z][\w-]*\b|[A-Za-z][\w-]*(?:, [A-Za-z][\w-]*)+/g, (list) => {
        const names = list.split(', ').map((id) => this.find(id, pointer));
        return names.every(Boolean) ? names.join(', ') : list;
      })
      .replace(/[A-Za-z][A-Za-z0-9]*(?:[_-][A-Za-z0-9]+)+/g, (id) => this.find(id, pointer) ?? id);
  }

  private find(id: string, pointer: string): string | undefined {
    return this.known.get(`${pointer.split('/')[1]}/${id}`) ?? this.known.get(id);
  }
}

/** An id as words: front_left becomes Front left. */
export function spoken(id: string): string {
  const words = id.replace(/[_-]+/g, ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}
