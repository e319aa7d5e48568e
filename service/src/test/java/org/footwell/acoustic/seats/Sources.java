package org.footwell.acoustic.seats;

import java.util.ArrayList;
import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.seats.SeatLevelsRequest.SeatDistance;
import org.footwell.calculation.Answer;
import org.footwell.parts.DriverBuilder;
import org.footwell.parts.Filter;
import org.footwell.parts.Seat;
import org.footwell.parts.SeatBuilder;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.Sensitivity.Basis;

/**
 * A request to be changed: sources that are heard at one seat in the third octave of 100 Hz, each 1 m
 * from every seat where no distances are given.
 */
final class Sources {

  static final SeatLevels CALCULATION = new SeatLevels();

  final List<SoundSourceBuilder> sources = new ArrayList<>();
  final SeatLevelsRequestBuilder levels =
      SeatLevelsRequestBuilder.builder().seats(List.of(seat("driver"))).fromHz(100.0).toHz(100.0);
  boolean measured = true;

  static Sources two() {
    Sources two = new Sources();
    two.add("a");
    two.add("b");
    return two;
  }

  /** 90 dB per watt, 8 ohm, 100 W, with a cone and a coil that never hold it. */
  SoundSourceBuilder add(String name) {
    SoundSourceBuilder source =
        SoundSourceBuilder.builder().name(name).driver(driver().build()).powerW(100.0);
    sources.add(source);
    return source;
  }

  /** 90 dB per watt, 8 ohm, a cone and a coil that never hold it. */
  static DriverBuilder driver() {
    return DriverBuilder.builder()
        .sensitivity(new Sensitivity(90.0, Basis.ONE_WATT))
        .ratedOhm(8.0)
        .continuousPowerW(20_000.0)
        .sdCm2(20_000.0)
        .xmaxMm(200.0);
  }

  static Seat seat(String name) {
    return SeatBuilder.builder().name(name).build();
  }

  static Filter filter(Filter.Kind kind, int order, double frequency) {
    return new Filter(kind, order, frequency, null);
  }

  SeatLevelsRequest request() {
    SeatLevelsRequest asked =
        levels.sources(sources.stream().map(SoundSourceBuilder::build).toList()).build();
    return measured && asked.distances() == null
        ? SeatLevelsRequestBuilder.builder(asked).distances(oneMetreEach(asked)).build()
        : asked;
  }

  private static List<SeatDistance> oneMetreEach(SeatLevelsRequest asked) {
    return asked.sources().stream()
        .flatMap(
            source ->
                asked.seats().stream()
                    .map(seat -> new SeatDistance(source.name(), seat.name(), 1.0)))
        .toList();
  }

  Answer<SeatLevelsResult> answer() {
    return Answers.of(CALCULATION, request());
  }

  SeatLevelsResult.SeatBand only() {
    return answer().result().seats().get(0).bands().get(0);
  }
}
