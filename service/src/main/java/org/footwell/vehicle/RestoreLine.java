package org.footwell.vehicle;

import io.swagger.v3.oas.annotations.media.Schema;
import java.util.List;
import org.footwell.calculation.text.Phrase;

/** One step back to how the vehicle left the factory. */
public record RestoreLine(
    @Schema(description = "What to do") RestoreStep step,
    @Schema(
            description =
                "Ids it is about: of parts, drivers, amplifiers or factory outputs; absent for the"
                    + " vehicle as a whole")
        List<String> ids,
    @Schema(description = "Ids of the positions where; for factory parts") List<String> places) {

  /** As it is said. */
  public Phrase phrase() {
    Phrase phrase = Phrase.of(step);
    if (ids != null) {
      phrase.own("names", ids);
    }
    return places == null ? phrase : phrase.own("places", places);
  }
}
