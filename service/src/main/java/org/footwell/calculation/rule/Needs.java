package org.footwell.calculation.rule;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** A field that makes sense only beside others: where it is given, they must be too. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@Repeatable(Needs.All.class)
public @interface Needs {

  /** Dotted path below the record. */
  String field();

  /** What must be given with it; of a list the field itself, where every entry has it or none. */
  String[] beside();

  /** Several of them on one record. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.TYPE)
  @interface All {
    Needs[] value();
  }
}
