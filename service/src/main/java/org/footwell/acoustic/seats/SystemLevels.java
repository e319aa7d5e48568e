package org.footwell.acoustic.seats;

import java.util.ArrayList;
import java.util.List;
import org.footwell.acoustic.seats.SeatLevelsRequest.TargetPoint;
import org.footwell.acoustic.seats.SeatLevelsResult.Drive;
import org.footwell.acoustic.seats.SeatLevelsResult.Largest;
import org.footwell.acoustic.seats.SeatLevelsResult.SeatBand;
import org.footwell.acoustic.seats.SeatLevelsResult.SeatLine;
import org.footwell.acoustic.seats.SeatLevelsResult.SourceBand;
import org.footwell.acoustic.seats.SeatLevelsResult.SourceLine;
import org.footwell.acoustic.seats.SeatLevelsResult.Tightest;
import org.footwell.calculation.Run;
import org.footwell.parts.LevelAt;
import org.footwell.physics.Air;
import org.footwell.physics.Decibels;
import org.footwell.physics.ThirdOctaves;

/** One sound request worked out. */
final class SystemLevels {

  private final SeatLevelsRequest q;
  private final Run run;
  private final Target target;
  private final Paths paths;
  private final List<SourceResponse> responses;
  private final List<SourcesInBand> bands;
  private final double[] delayMs;
  private final int reference;

  SystemLevels(SeatLevelsRequest q, Run run) {
    this.q = q;
    this.run = run;
    this.target = target(q);
    this.paths = new Paths(q, run.apply(Air.SPEED_OF_SOUND, q.temperatureC()));
    double density = run.apply(Air.DENSITY, q.temperatureC());
    this.responses =
        q.sources().stream().map(source -> new SourceResponse(source, density)).toList();
    this.delayMs = q.sources().stream().mapToDouble(SoundSource::delayMs).toArray();
    this.reference = reference(q);
    this.bands = bands();
  }

  /** What is wanted, if anything is. */
  static Target target(SeatLevelsRequest q) {
    if (q.tilt() != null) {
      return Target.tilted(q.tilt().levelDbSpl(), q.tilt().slopeDbPerOctave());
    }
    List<TargetPoint> points = q.target() == null ? List.of() : q.target();
    return Target.through(
        points.stream().map(one -> new LevelAt(one.frequencyHz(), one.levelDbSpl())).toList());
  }

  private static int reference(SeatLevelsRequest q) {
    for (int seat = 0; seat < q.seats().size(); seat++) {
      if (q.seats().get(seat).name().equals(q.referenceSeat())) {
        return seat;
      }
    }
    return 0;
  }

  private List<SourcesInBand> bands() {
    List<SourcesInBand> all = new ArrayList<>();
    for (double frequency : ThirdOctaves.between(q.fromHz(), q.toHz()).toArray()) {
      run.checkDeadline();
      List<SourceInBand> sources =
          responses.stream().map(response -> response.at(frequency)).toList();
      all.add(new SourcesInBand(frequency, sources, paths, frequency <= q.incoherentAboveHz()));
    }
    return all;
  }

  SeatLevelsResult result() {
    List<SeatLine> seats = new ArrayList<>();
    for (int seat = 0; seat < q.seats().size(); seat++) {
      run.checkDeadline();
      seats.add(seat(seat));
    }
    SeatRemarks remarks = new SeatRemarks(q, run);
    remarks.onModel(bands);
    remarks.onUnjudged();
    remarks.onCancellation(bands, delayMs);
    remarks.onHoldingBack(bands, reference, delayMs);
    Tightest tightest = null;
    Largest largest = null;
    SourcesInBand noted = bands.get(0);
    if (target.given()) {
      tightest = tightest(seats);
      largest = largest();
      noted = inBand(tightest.frequencyHz());
      remarks.onTarget(tightest, largest);
    }
    note(noted);
    return new SeatLevelsResult(sources(), drives(), seats, tightest, largest);
  }

  private List<SourceLine> sources() {
    List<SourceLine> lines = new ArrayList<>();
    for (int i = 0; i < q.sources().size(); i++) {
      List<SourceBand> alone = new ArrayList<>();
      for (SourcesInBand band : bands) {
        SourceInBand source = band.sources().get(i);
        SourceInBand.Held held = source.held();
        alone.add(
            new SourceBand(
                band.frequency(),
                source.levelDbSpl() + held.driveDb(),
                source.powerW() * Decibels.toPower(held.driveDb()),
                held.by()));
      }
      lines.add(new SourceLine(q.sources().get(i).name(), alone));
    }
    return lines;
  }

  private List<Drive> drives() {
    return bands.stream()
        .map(
            band ->
                new Drive(
                    band.frequency(),
                    band.driveDb(),
                    name(band.holding()),
                    band.heldBy(),
                    paths.cabinGainDb(band.frequency())))
        .toList();
  }

  private String name(int source) {
    return source < 0 ? null : q.sources().get(source).name();
  }

  private SeatLine seat(int seat) {
    List<SeatBand> lines = new ArrayList<>();
    for (SourcesInBand band : bands) {
      SourcesInBand.Sum sum = band.at(seat, band.driveDb(), delayMs);
      Double wanted = target.at(band.frequency());
      lines.add(
          new SeatBand(
              band.frequency(),
              sum.parts(),
              sum.coherentDb(),
              sum.incoherentDb(),
              sum.countedDb(),
              wanted,
              wanted == null ? null : Double.valueOf(sum.countedDb() - wanted)));
    }
    return new SeatLine(q.seats().get(seat).name(), lines);
  }

  private Tightest tightest(List<SeatLine> seats) {
    Tightest least = null;
    for (SeatLine seat : seats) {
      for (int b = 0; b < bands.size(); b++) {
        Double headroom = seat.bands().get(b).headroomDb();
        if (headroom != null && (least == null || headroom < least.headroomDb())) {
          SourcesInBand band = bands.get(b);
          least =
              new Tightest(
                  headroom, seat.name(), band.frequency(), name(band.holding()), band.heldBy());
        }
      }
    }
    return least;
  }

  private Largest largest() {
    List<SourcesInBand> wanted = new ArrayList<>();
    List<Double> drives = new ArrayList<>();
    for (SourcesInBand band : bands) {
      Double level = target.at(band.frequency());
      if (level != null) {
        wanted.add(band);
        drives.add(level - band.at(reference, 0, delayMs).countedDb());
      }
    }
    return new ShapedProgramme(q, wanted, drives, responses).largest(reference, delayMs, run);
  }

  private SourcesInBand inBand(double frequency) {
    return bands.stream().filter(band -> band.frequency() == frequency).findFirst().orElseThrow();
  }

  /** One band at the reference seat stands for all in the workings. */
  private void note(SourcesInBand band) {
    for (int i = 0; i < responses.size(); i++) {
      responses.get(i).note(band.frequency(), run);
      paths.note(i, reference, band.frequency(), run);
    }
  }
}
