package org.footwell;

import java.util.List;
import org.footwell.calculation.Calculation;
import org.footwell.level.SoundLevel;

/** Every calculation of the service, one line each. */
public final class Calculations {

  public static final List<Calculation<?, ?>> ALL = List.of(new SoundLevel());

  private Calculations() {}
}
