package org.footwell.calculation;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * On a field of a result whose name means something else in another record: what it is called where people read it. The
 * contract keeps its own name.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.METHOD})
public @interface Called {

  /** A name such as the contract has them, from which its label follows in every language. */
  String value();
}
