package org.footwell.acoustic.seats;

import java.util.LinkedHashMap;
import java.util.Map;
import org.footwell.acoustic.seats.SeatLevelsRequest.SeatDistance;
import org.footwell.calculation.Run;
import org.footwell.parts.Cabin;
import org.footwell.parts.Seat;
import org.footwell.physics.CabinGain;
import org.footwell.physics.PointSource;

/** From every source to every seat: distance, what it takes, and what the cabin gives. */
final class Paths {

  private final double[][] distanceM;
  private final Cabin cabin;
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
        Seat seat = q.seats().get(k);
        distanceM[i][k] =
            q.distances() == null
                ? source.position().distanceTo(seat.head())
                : measured.get(new Way(source.name(), seat.name()));
      }
    }
  }

  /** From one source to one seat, by their names. */
  record Way(String source, String seat) {}

  /** What the way takes, dB. */
  double gainDb(int source, int seat) {
    return PointSource.DISTANCE.at(counted(source, seat));
  }

  private double counted(int source, int seat) {
    double distance = distanceM[source][seat];
    return cabin == null ? distance : CabinGain.countedM(distance, cabin.criticalDistanceM());
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
            CabinGain.RISE.at(
                CabinGain.CORNER.at(speed, cabin.lengthM()), frequency, cabin.gainCapDb()));
  }

  /** Notes the way from one source to one seat. */
  void note(int source, int seat, double frequency, Run run) {
    run.apply(PointSource.DISTANCE, counted(source, seat));
    if (cabin != null) {
      run.apply(
          CabinGain.RISE,
          run.apply(CabinGain.CORNER, speed, cabin.lengthM()),
          frequency,
          cabin.gainCapDb());
    }
  }
}
