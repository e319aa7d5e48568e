package org.footwell.calculation.text;

/**
 * Something with a stable code whose sentence lives in the {@code texts.properties} beside it, so
 * that it can be translated. Implemented by enums: the code is the constant's name in kebab case.
 */
public interface Coded {

  String name();

  /** The stable code a caller may depend on, such as {@code load-below-minimum}. */
  default String code() {
    return Codes.of(this);
  }

  /** Under what its sentence stands in the {@code texts.properties} of its package. */
  default String key() {
    return code();
  }
}
