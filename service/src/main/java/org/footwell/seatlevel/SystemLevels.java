package org.footwell.seatlevel;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Run;
import org.footwell.parts.FrequencyFault;
import org.footwell.physics.Air;
import org.footwell.physics.Decibels;
import org.footwell.physics.ThirdOctaves;
import org.footwell.seatlevel.SeatLevelsResult.Drive;
import org.footwell.seatlevel.SeatLevelsResult.Largest;
import org.footwell.seatlevel.SeatLevelsResult.SeatBand;
import org.footwell.seatlevel.SeatLevelsResult.SeatLine;
import org.footwell.seatlevel.SeatLevelsResult.SourceBand;
import org.footwell.seatlevel.SeatLevelsResult.SourceLine;
import org.footwell.seatlevel.SeatLevelsResult.Tightest;

/** One sound request worked out. */
final class SystemLevels {

  private final SeatLevelsRequest q;
  private final Run run;
  private final Target target;
  private final Paths paths;
  private final List<SourceResponse> responses;
  private final List<BandLevels> bands;
  private final double[] delayMs;
  private final int reference;

  SystemLevels(SeatLevelsRequest q, Run run) {
    this.q = q;
    this.run = run;
    this.target = new Target(q);
    this.paths = new Paths(q, run.apply(Air.SPEED_OF_SOUND, q.temperatureC()));
    double density = run.apply(Air.DENSITY, q.temperatureC());
    this.responses =
        q.sources().stream().map(source -> new SourceResponse(source, density)).toList();
    this.delayMs = q.sources().stream().mapToDouble(SoundSource::delayMs).toArray();
    this.reference = reference(q);
    this.bands = bands();
  }

  private static int reference(SeatLevelsRequest q) {
    for (int seat = 0; seat < q.seats().size(); seat++) {
      if (q.seats().get(seat).name().equals(q.referenceSeat())) {
        return seat;
      }
    }
    return 0;
  }

  private List<BandLevels> bands() {
    List<BandLevels> all = new ArrayList<>();
    for (double frequency : ThirdOctaves.between(q.fromHz(), q.toHz()).toArray()) {
      run.checkDeadline();
      List<SourceInBand> sources =
          responses.stream().map(response -> response.at(frequency)).toList();
      all.add(new BandLevels(frequency, sources, paths, frequency <= q.incoherentAboveHz()));
    }
    if (all.isEmpty()) {
      run.refuse(FrequencyFault.RANGE_WITHOUT_POINTS)
          .at("/from_hz")
          .given(q.fromHz() + " to " + q.toHz() + " Hz")
          .allowed("a wider range");
    } else if (target.given() && all.stream().allMatch(b -> target.at(b.frequency()) == null)) {
      run.refuse(SeatLevelFault.TARGET_OUTSIDE_BANDS)
          .at("/target")
          .allowed(q.fromHz() + " to " + q.toHz() + " Hz");
    }
    run.requireNoFaults();
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
    BandLevels noted = bands.get(0);
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
      for (BandLevels band : bands) {
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
    for (BandLevels band : bands) {
      BandLevels.Sum sum = band.at(seat, band.driveDb(), delayMs);
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
          BandLevels band = bands.get(b);
          least =
              new Tightest(
                  headroom, seat.name(), band.frequency(), name(band.holding()), band.heldBy());
        }
      }
    }
    return least;
  }

  private Largest largest() {
    List<BandLevels> wanted = new ArrayList<>();
    List<Double> drives = new ArrayList<>();
    for (BandLevels band : bands) {
      Double level = target.at(band.frequency());
      if (level != null) {
        wanted.add(band);
        drives.add(level - band.at(reference, 0, delayMs).countedDb());
      }
    }
    return new ShapedProgramme(q, wanted, drives, responses).largest(reference, delayMs, run);
  }

  private BandLevels inBand(double frequency) {
    return bands.stream().filter(band -> band.frequency() == frequency).findFirst().orElseThrow();
  }

  /** One band at the reference seat stands for all in the workings. */
  private void note(BandLevels band) {
    for (int i = 0; i < responses.size(); i++) {
      responses.get(i).note(band.frequency(), run);
      paths.note(i, reference, band.frequency(), run);
    }
  }
}
