package org.footwell.seatlevel;

import java.util.LinkedHashMap;
import java.util.Map;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.parts.Position;
import org.footwell.physics.Decibels;
import org.footwell.seatlevel.SeatLevelsRequest.CabinModel;
import org.footwell.seatlevel.SeatLevelsRequest.SeatDistance;

/** From every source to every seat: distance, what it takes, and what the cabin gives. */
final class Paths {

  static final Source INVERSE_SQUARE =
      Source.of("Inverse-square law of a point source in free field");
  private static final Source HALF_WAVE = Source.of("Half-wave resonance of a tube");

  private static final Formula.Of1 DISTANCE =
      Formula.of("distance_db", "−20·lg(r/1 m)", "dB", INVERSE_SQUARE)
          .with("r", r -> Decibels.ofAmplitude(1 / r));
  private static final Formula.Of2 CORNER =
      Formula.of("pressure_corner_hz", "c/(2·L)", "Hz", HALF_WAVE)
          .with("c", "L", (c, l) -> c / (2 * l));
  private static final Formula.Of3 CABIN_GAIN =
      Formula.of(
              "cabin_gain_db",
              "min(cap, 40·lg(fc/f)), 0 above fc",
              "dB",
              Source.of("12 dB per octave of a sealed, rigid cabin; common practice, no source"))
          .with(
              "fc",
              "f",
              "cap",
              (fc, f, cap) -> Math.min(cap, Math.max(0, 2 * Decibels.ofAmplitude(fc / f))));

  private final double[][] distanceM;
  private final CabinModel cabin;
  private final double speed;

  /** Distances by tape measure or from positions; the request is sound. */
  Paths(SeatLevelsRequest q, double speed) {
    this.cabin = q.cabin();
    this.speed = speed;
    this.distanceM = new double[q.sources().size()][q.seats().size()];
    Map<Way, Double> measured = new LinkedHashMap<>();
    if (q.distances() != null) {
      for (SeatDistance distance : q.distances()) {
        measured.put(new Way(distance.source(), distance.seat()), distance.distanceM());
      }
    }
    for (int i = 0; i < distanceM.length; i++) {
      SoundSource source = q.sources().get(i);
      for (int k = 0; k < distanceM[i].length; k++) {
        SeatLevelsRequest.Seat seat = q.seats().get(k);
        distanceM[i][k] =
            q.distances() == null
                ? between(source.position(), seat.position())
                : measured.get(new Way(source.name(), seat.name()));
      }
    }
  }

  /** From one source to one seat, by their names. */
  record Way(String source, String seat) {}

  static double between(Position a, Position b) {
    double x = a.xM() - b.xM();
    double y = a.yM() - b.yM();
    double z = a.zM() - b.zM();
    return Math.sqrt(x * x + y * y + z * z);
  }

  /** What the way takes, dB. */
  double gainDb(int source, int seat) {
    return DISTANCE.at(counted(source, seat));
  }

  private double counted(int source, int seat) {
    double distance = distanceM[source][seat];
    return cabin == null ? distance : Math.min(distance, cabin.criticalDistanceM());
  }

  /** How long the sound is on its way, ms. */
  double travelMs(int source, int seat) {
    return 1000 * distanceM[source][seat] / speed;
  }

  /** Low-frequency gain of the cabin, dB; null without one. */
  Double cabinGainDb(double frequency) {
    return cabin == null
        ? null
        : Double.valueOf(
            CABIN_GAIN.at(CORNER.at(speed, cabin.lengthM()), frequency, cabin.gainCapDb()));
  }

  /** Notes the way from one source to one seat. */
  void note(int source, int seat, double frequency, Run run) {
    run.apply(DISTANCE, counted(source, seat));
    if (cabin != null) {
      run.apply(
          CABIN_GAIN, run.apply(CORNER, speed, cabin.lengthM()), frequency, cabin.gainCapDb());
    }
  }
}
