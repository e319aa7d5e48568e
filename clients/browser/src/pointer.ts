type Tree = Record<string, unknown>;

const steps = (pointer: string) =>
  pointer.split('/').slice(1).map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));

/** The value at a JSON Pointer (RFC 6901), undefined where there is none. */
export function at(document: unknown, pointer: string): unknown {
  return steps(pointer).reduce((value, step) => (value as Tree | undefined)?.[step], document);
}

/** Puts a value at a JSON Pointer whose parent is there. */
export function put(document: unknown, pointer: string, value: unknown): void {
  const path = steps(pointer);
  const last = path.pop()!;
  (path.reduce((parent, step) => (parent as Tree)[step], document) as Tree)[last] = value;
}

/** Where pieces of a request come from: the pointer of each piece, and that of its origin. */
export type Origins = Map<string, string>;

/** The origin of a pointer into a request: by the longest piece it lies in. */
export function originOf(pointer: string, origins: Origins): string {
  for (let end = pointer.length; end > 0; end = pointer.lastIndexOf('/', end - 1)) {
    const origin = origins.get(pointer.slice(0, end));
    if (origin !== undefined) return origin + pointer.slice(end);
  }
  return pointer;
}

/** A request, and where its pieces come from: `/seats/0` of the vehicle, `package:/drivers/0`. */
export interface Composed<Q> {
  request: Q;
  origins: Origins;
}
