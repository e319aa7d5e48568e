package org.footwell.catalogue.row;

import java.util.Locale;

/** How bad a finding is; the worst finding is the verdict on its row. */
public enum Level {
  OK,
  NOTE,
  WARNING,
  STOP;

  /** The level of this name in the contract. */
  public static Level of(Enum<?> inContract) {
    return valueOf(inContract.name());
  }

  public boolean atLeast(Level other) {
    return compareTo(other) >= 0;
  }

  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }
}
