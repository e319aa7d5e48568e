package org.footwell.calculation.rule;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Numbers that rise: from entry to entry of a list, or from one field to the next. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@Repeatable(Ascending.All.class)
public @interface Ascending {

  /** One dotted path with a {@code *}, or several without. */
  String[] value();

  /** Whether a number may equal the one before. */
  boolean orEqual() default false;

  /** Several of them on one record. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.TYPE)
  @interface All {
    Ascending[] value();
  }
}
