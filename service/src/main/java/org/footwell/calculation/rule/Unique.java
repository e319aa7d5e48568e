package org.footwell.calculation.rule;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What must differ from entry to entry of a list: one field, or several taken together. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@Repeatable(Unique.All.class)
public @interface Unique {

  /** Dotted paths of one list, {@code *} for the index. */
  String[] value();

  /** Several of them on one record. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.TYPE)
  @interface All {
    Unique[] value();
  }
}
