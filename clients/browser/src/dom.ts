export type Child = Node | string | false | undefined | Child[];
type Attributes = Record<string, string | number | boolean | undefined | ((event: Event) => void)>;

const SVG = 'http://www.w3.org/2000/svg';

function fill<E extends Element>(element: E, attributes: Attributes, children: Child[]): E {
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === 'function') element.addEventListener(name, value);
    else if (value !== undefined && value !== false) element.setAttribute(name, value === true ? '' : String(value));
  }
  for (const child of children.flat(9)) if (child) element.append(child as Node | string);
  return element;
}

/** An element; a function among the attributes listens to the event of that name. */
export function h<K extends keyof HTMLElementTagNameMap>(tag: K, attributes: Attributes = {}, ...children: Child[]) {
  return fill(document.createElement(tag), attributes, children);
}

export function svg(tag: string, attributes: Attributes = {}, ...children: Child[]): Element {
  return fill(document.createElementNS(SVG, tag), attributes, children);
}
