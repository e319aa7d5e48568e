package org.footwell.calculation.rule;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** Of these fields no more than one may be given. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@Repeatable(AtMostOne.All.class)
public @interface AtMostOne {

  /** Dotted paths below the record. */
  String[] value();

  /** Several of them on one record. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.TYPE)
  @interface All {
    AtMostOne[] value();
  }
}
