package org.footwell.acoustic.seats;

import java.util.ArrayList;
import java.util.List;
import org.footwell.Answers;
import org.footwell.acoustic.seats.SeatLevelsRequest.CabinModel;
import org.footwell.acoustic.seats.SeatLevelsRequest.Seat;
import org.footwell.acoustic.seats.SeatLevelsRequest.SeatDistance;
import org.footwell.acoustic.seats.SeatLevelsRequest.TargetPoint;
import org.footwell.acoustic.seats.SeatLevelsRequest.Tilt;
import org.footwell.calculation.Answer;
import org.footwell.parts.Filter;
import org.footwell.parts.Position;
import org.footwell.parts.Sensitivity;
import org.footwell.parts.Sensitivity.Basis;

/** Requests in the making. */
final class Sources {

  static final SeatLevels CALCULATION = new SeatLevels();

  private Sources() {}

  /** One source; starts as 90 dB per watt, 8 ohm, 100 W, with a cone and a coil that never hold it. */
  static final class SourceDraft {
    String name = "a";
    Sensitivity sensitivity = new Sensitivity(90.0, Basis.ONE_WATT);
    double ratedOhm = 8;
    Double powerW = 100.0;
    Double voltageV;
    Double continuousPowerW = 20_000.0;
    SoundSource.Cone cone = new SoundSource.Cone(20_000.0, 200.0);
    SoundSource.RollOff rollOff;
    Filter highPass;
    Filter lowPass;
    Double delayMs;
    Double trimDb;
    Integer polarity;
    Position position;

    SoundSource source() {
      return SoundSourceBuilder.builder()
          .name(name)
          .sensitivity(sensitivity)
          .ratedOhm(ratedOhm)
          .powerW(powerW)
          .voltageV(voltageV)
          .continuousPowerW(continuousPowerW)
          .cone(cone)
          .rollOff(rollOff)
          .highPass(highPass)
          .lowPass(lowPass)
          .delayMs(delayMs)
          .trimDb(trimDb)
          .polarity(polarity)
          .position(position)
          .build();
    }
  }

  /** A request; starts with one seat, every source 1 m from it, the third octave of 100 Hz. */
  static final class Draft {
    final List<SourceDraft> sources = new ArrayList<>();
    List<Seat> seats = List.of(new Seat("driver", null));
    List<SeatDistance> distances;
    CabinModel cabin;
    Double fromHz = 100.0;
    Double toHz = 100.0;
    Double incoherentAboveHz;
    List<TargetPoint> target;
    Tilt tilt;
    String referenceSeat;
    Double crestFactorDb;
    boolean measured = true;

    SourceDraft add(String name) {
      SourceDraft source = new SourceDraft();
      source.name = name;
      sources.add(source);
      return source;
    }

    SeatLevelsRequest request() {
      List<SeatDistance> ways = distances;
      if (ways == null && measured) {
        ways =
            sources.stream()
                .flatMap(
                    source ->
                        seats.stream().map(seat -> new SeatDistance(source.name, seat.name(), 1.0)))
                .toList();
      }
      return SeatLevelsRequestBuilder.builder()
          .sources(sources.stream().map(SourceDraft::source).toList())
          .seats(seats)
          .distances(ways)
          .cabin(cabin)
          .fromHz(fromHz)
          .toHz(toHz)
          .incoherentAboveHz(incoherentAboveHz)
          .target(target)
          .tilt(tilt)
          .referenceSeat(referenceSeat)
          .crestFactorDb(crestFactorDb)
          .build();
    }

    Answer<SeatLevelsResult> answer() {
      return Answers.of(CALCULATION, request());
    }

    SeatLevelsResult.SeatBand only() {
      return answer().result().seats().get(0).bands().get(0);
    }
  }

  static Draft two() {
    Draft draft = new Draft();
    draft.add("a");
    draft.add("b");
    return draft;
  }

  static Filter filter(Filter.Kind kind, int order, double frequency) {
    return new Filter(kind, order, frequency, null);
  }
}
