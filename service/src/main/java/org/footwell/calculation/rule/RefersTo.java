package org.footwell.calculation.rule;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A name that must be known elsewhere in the request. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@Repeatable(RefersTo.All.class)
public @interface RefersTo {

  /** Dotted path of the name, {@code *} for an index. */
  String field();

  /** Dotted path of the names it may be. */
  String to();

  /** Several of them on one record. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.TYPE)
  @interface All {
    RefersTo[] value();
  }
}
