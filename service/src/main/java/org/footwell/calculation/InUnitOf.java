package org.footwell.calculation;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * On a number whose own name has no unit, because it is of whatever quantity a caller names: in a request the field
 * beside it that names this quantity by its path, in a result that field of the request.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.METHOD})
public @interface InUnitOf {

  /** The name of that field. */
  String value();
}
