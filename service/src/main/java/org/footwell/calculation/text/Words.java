package org.footwell.calculation.text;

/**
 * Words that stand within sentences, as constants of an enum: those of {@code HeldBy.POWER} are
 * {@code held-by.power} in the {@code texts.properties} of their package. With arguments of their
 * own they are a {@link Phrase}.
 */
public interface Words extends Coded {

  @Override
  default String key() {
    String type = ((Enum<?>) this).getDeclaringClass().getSimpleName();
    return Names.snake(type).substring(1).replace('_', '-') + "." + code();
  }
}
