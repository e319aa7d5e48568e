package org.footwell.acoustic.alignment;

import java.util.List;
import java.util.Optional;
import org.footwell.acoustic.alignment.SeatDelaysRequest.PlacedChannel;
import org.footwell.parts.Filter;
import org.footwell.physics.AnalogFilter;
import org.footwell.physics.Phasor;

/** A channel as loud as the others, through its filters and with its polarity. */
final class HeardChannel {

  private final Optional<AnalogFilter> highPass;
  private final Optional<AnalogFilter> lowPass;
  private final int polarity;

  HeardChannel(PlacedChannel channel) {
    highPass = Optional.ofNullable(channel.highPass()).map(Filter::highPass);
    lowPass = Optional.ofNullable(channel.lowPass()).map(Filter::lowPass);
    polarity = channel.polarity();
  }

  boolean hasHighPass() {
    return highPass.isPresent();
  }

  /** Phase of the filters in degrees, unwrapped. */
  double filtersDeg(double frequencyHz) {
    return highPass.map(filter -> filter.phaseDeg(frequencyHz)).orElse(0.0)
        + lowPass.map(filter -> filter.phaseDeg(frequencyHz)).orElse(0.0);
  }

  /** Its pressure, 1 in the pass band, at a place where it arrives so late, ms. */
  Phasor at(double frequencyHz, double lateMs) {
    Phasor pressure = Phasor.ofPolar(1, -0.36 * frequencyHz * lateMs).times(polarity);
    for (Optional<AnalogFilter> filter : List.of(highPass, lowPass)) {
      pressure = filter.map(one -> one.at(frequencyHz)).map(pressure::times).orElse(pressure);
    }
    return pressure;
  }
}
