package org.footwell.acoustic.enclosure.lowend;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.ExactlyOne;
import org.footwell.calculation.rule.Needed;
import org.footwell.parts.Cabin;
import org.footwell.parts.CurveFrequencies;
import org.footwell.parts.Driver;
import org.footwell.parts.EvenOrder;
import org.footwell.parts.Filter;
import org.footwell.physics.AnalogFilter;

/** What every request for a driver in a box has: the driver, what drives it, what to look at. */
@Needed({
  "driver.re_ohm",
  "driver.rated_ohm",
  "driver.fs_hz",
  "driver.qms",
  "driver.qes",
  "driver.vas_l",
  "driver.sd_cm2"
})
@ExactlyOne({"voltage_v", "power_w"})
@ExactlyOne({"cabin.length_m", "cabin.transfer"})
@Keeps(
    value = EvenOrder.class,
    of = {"high_pass", "low_pass"})
public interface PlayedBox {

  Driver driver();

  Double voltageV();

  Double powerW();

  Double sourceOhm();

  Double temperatureC();

  Integer subsonicOrder();

  Filter highPass();

  Filter lowPass();

  Cabin cabin();

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
    return CurveFrequencies.range(10, 200);
  }
}
