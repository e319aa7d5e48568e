package org.footwell.calculation;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * What a text must stand for beyond its length and signs, which a pattern cannot say. It is checked with
 * them, and told by a code of its own. Such a text can be read on: it is only known to mean nothing.
 */
public interface TextForm {

  /** Its name in the contract, in snake_case. */
  String name();

  /** Whether a text of the right length and signs stands for something. */
  boolean holds(String text);

  /** What it is refused for where it does not. */
  FaultCode fault();

  /** Marks a text of a record with its form, a class with a constructor without arguments. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.METHOD)
  @interface Of {
    Class<? extends TextForm> value();
  }
}
