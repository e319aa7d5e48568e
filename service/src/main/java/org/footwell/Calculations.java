package org.footwell;

import java.util.List;
import org.footwell.amplifier.RailMatch;
import org.footwell.calculation.Calculation;
import org.footwell.level.SoundLevel;
import org.footwell.load.WiringLoad;

/** Every calculation of the service, one line each. */
public final class Calculations {

  public static final List<Calculation<?, ?>> ALL =
      List.of(new WiringLoad(), new RailMatch(), new SoundLevel());

  private Calculations() {}
}
