package org.footwell.acoustic.enclosure.lowend;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.footwell.acoustic.enclosure.radiator.BoxDriver;
import org.footwell.acoustic.enclosure.radiator.CabinResponse;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Filter;
import org.footwell.physics.AnalogFilter;

/** What every request for a driver in a box has: the driver, what drives it, what to look at. */
public interface PlayedBox {

  BoxDriver driver();

  Double voltageV();

  Double powerW();

  Double sourceOhm();

  Double temperatureC();

  Integer subsonicOrder();

  Filter highPass();

  Filter lowPass();

  CabinResponse cabin();

  CurveFrequencies frequencies();

  /** The filters of the channel, none where none is given. */
  default List<AnalogFilter> filters() {
    return Stream.of(
            Optional.ofNullable(highPass()).map(Filter::highPass),
            Optional.ofNullable(lowPass()).map(Filter::lowPass))
        .flatMap(Optional::stream)
        .toList();
  }

  /** The range boxes are made for, taken where none is asked for. */
  static CurveFrequencies bass() {
    return new CurveFrequencies(null, 10.0, 200.0, null);
  }
}
