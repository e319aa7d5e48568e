package org.footwell.calculation;

/**
 * A place in a request as it is gone through, which is put into a JSON Pointer only where something is
 * wrong there: most is right.
 *
 * @param above what holds it, or null for the request itself
 * @param name in what holds it: of a field or an index
 */
record Where(Where above, Object name) {

  static final Where OUTERMOST = new Where(null, "");

  Where below(Object inner) {
    return new Where(this, inner);
  }

  String pointer() {
    return above == null ? "" : above.pointer() + "/" + name;
  }
}
