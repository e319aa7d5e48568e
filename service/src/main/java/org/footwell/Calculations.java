package org.footwell;

import java.util.List;
import org.footwell.alignment.SeatDelays;
import org.footwell.amplifier.RailMatch;
import org.footwell.calculation.Calculation;
import org.footwell.level.SoundLevel;
import org.footwell.load.WiringLoad;
import org.footwell.plan.PlanReview;

/** Every calculation of the service, one line each. */
public final class Calculations {

  public static final List<Calculation<?, ?>> ALL =
      List.of(
          new WiringLoad(), new RailMatch(), new SoundLevel(), new SeatDelays(), new PlanReview());

  private Calculations() {}
}
