package org.footwell.calculation.rule;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Fields of a shared part that this record cannot do without, though others can. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@Repeatable(Needed.All.class)
public @interface Needed {

  /** Dotted paths below the record; each must be given where what holds it is. */
  String[] value();

  /** Several of them on one record. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.TYPE)
  @interface All {
    Needed[] value();
  }
}
