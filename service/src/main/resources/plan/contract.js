// What the contract says of a plan: the schema at each place of it, the rules between places, the formats of
// answers. Everything the form shows is made from this.

const REVIEW = "/v1/plan-review";

export class Contract {
  #schemas;
  #parameters;
  #plan;

  /** @param openapi the contract as the service gives it */
  constructor(openapi) {
    this.#schemas = openapi.components.schemas;
    this.#parameters = openapi.components.parameters ?? {};
    const review = openapi.paths[REVIEW].post;
    this.#plan = this.#whole(review.requestBody.content["application/json"].schema);
    this.parameters = review.parameters.map((one) => this.#parameter(one));
  }

  #parameter({ $ref, ...own }) {
    return $ref ? this.#parameters[$ref.split("/").at(-1)] : own;
  }

  /** Formats of a review, in the contract's order. */
  get formats() {
    return this.parameters.find(({ name }) => name === "format").schema.enum;
  }

  /** A schema with what it refers to; what stands at the place goes before what stands at the record. */
  #whole(schema) {
    const ref = schema.$ref ?? schema.allOf?.[0].$ref;
    if (!ref) return schema;
    const record = ref.split("/").at(-1);
    const { allOf, $ref, ...own } = schema;
    return { ...this.#schemas[record], ...own, record };
  }

  /** The schema at a path, or undefined where the contract knows no such place. */
  at(path) {
    let here = this.#plan;
    for (const step of path) {
      const next = here.type === "array" ? here.items : Object.hasOwn(here.properties ?? {}, step) && here.properties[step];
      if (!next) return undefined;
      here = this.#whole(next);
    }
    return here;
  }

  /** Rules that name fields of the record at a path, each with its fields as patterns of the whole plan. */
  #rules(path) {
    const found = [];
    for (let depth = 0; depth <= path.length; depth++) {
      const above = path.slice(0, depth);
      for (const { rule, fields } of this.at(above)?.["x-rules"] ?? []) {
        found.push({ rule, fields: fields.map((field) => [...above, ...field.split(".")]) });
      }
    }
    return found;
  }

  #ruled(path, kind) {
    return this.#rules(path.slice(0, -1)).some(({ rule, fields }) => rule === kind && fields.some((field) => matches(field, path)));
  }

  isRequired(path) {
    const required = this.at(path.slice(0, -1)).required ?? [];
    return required.includes(path.at(-1)) || this.#ruled(path, "needed");
  }

  /** Whether the contract keeps this field of a shared record out of this place. */
  isShut(path) {
    return this.#ruled(path, "without");
  }

  /** The pattern of what the field at a path names, such as `new_parts.*.id`, or undefined. */
  referredBy(path) {
    const rule = this.#rules(path.slice(0, -1)).find(({ rule, fields }) => rule === "refers_to" && matches(fields[0], path));
    return rule?.fields[1];
  }

  /** The fields no two entries of the list at a path may share. */
  uniqueIn(path) {
    return this.#rules(path)
      .filter(({ rule, fields }) => rule === "unique" && fields.length === 1 && matches(fields[0].slice(0, -2), path))
      .map(({ fields }) => fields[0].at(-1));
  }

  /** Fields of the record at a path of which one excludes the others. */
  choices(path) {
    return this.#rules(path)
      .filter(({ rule }) => rule === "exactly_one" || rule === "at_most_one")
      .filter(({ fields }) => fields.every((field) => matches(field.slice(0, -1), path)))
      .map(({ rule, fields }) => ({ needed: rule === "exactly_one", names: fields.map((field) => field.at(-1)) }));
  }
}

const matches = (pattern, path) =>
  pattern.length === path.length && pattern.every((step, i) => (step === "*" ? typeof path[i] === "number" : step === path[i]));
