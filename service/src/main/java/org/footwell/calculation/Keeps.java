package org.footwell.calculation;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A rule with a logic of its own. Beside a record it holds wherever that stands in a request; beside a
 * calculation, for what is put to that alone.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@Repeatable(Keeps.All.class)
public @interface Keeps {

  Class<? extends Check<?>> value();

  /** Dotted paths to the parts it is held against, each alone; none for the record itself. */
  String[] of() default {};

  /** Several of them in one place. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.TYPE)
  @interface All {
    Keeps[] value();
  }
}
