package org.footwell.acoustic.seats;

import java.util.ArrayList;
import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.seats.SeatLevelsRequest.Seat;
import org.footwell.acoustic.seats.SeatLevelsRequest.SeatDistance;
import org.footwell.calculation.Answer;
import org.footwell.parts.Filter;
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
      SeatLevelsRequestBuilder.builder()
          .seats(List.of(new Seat("driver", null)))
          .fromHz(100.0)
          .toHz(100.0);
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
        SoundSourceBuilder.builder()
            .name(name)
            .sensitivity(new Sensitivity(90.0, Basis.ONE_WATT))
            .ratedOhm(8.0)
            .powerW(100.0)
            .continuousPowerW(20_000.0)
            .cone(new SoundSource.Cone(20_000.0, 200.0));
    sources.add(source);
    return source;
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
