package org.footwell.calculation;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A rule with a logic or codes of its own, which the rules between fields cannot say. It is declared by
 * {@link Keeps} and held against a part of a request as soon as what it is about could be read, whatever
 * else is wrong: so all faults come at once.
 *
 * <p>A class with a constructor without arguments, marked {@link Of}.
 *
 * @param <T> the part
 */
public interface Check<T> {

  /**
   * Refuses what breaks the rule.
   *
   * @param part what the rule is about is there where it must be, and within bounds; relations need not
   *     hold, and what is refused of those is told already
   * @param to takes faults with places from the part
   */
  void check(T part, Refusing to);

  /** How a check is stated in the contract: its kind is the name of its class in snake_case. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.TYPE)
  @interface Of {

    /** Dotted paths below the part to all that it reads; none where it reads all there is. */
    String[] value() default {};

    /** The rule as a sentence. */
    String says();
  }
}
