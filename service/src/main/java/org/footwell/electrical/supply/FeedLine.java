package org.footwell.electrical.supply;

import java.util.OptionalDouble;
import org.footwell.parts.Cable;
import org.footwell.parts.ReturnPath;
import org.footwell.physics.Conductors;
import org.footwell.physics.ConstantPower;

/** The cable that feeds one amplifier from the battery, and the fuse that protects it. */
public final class FeedLine {

  /** Share of its rating a fuse is loaded with for long; common practice, no source. */
  private static final double LOADING = 0.8;

  private final Leg leg;

  private FeedLine(Leg leg) {
    this.leg = leg;
  }

  /**
   * A line to a load of constant power.
   *
   * @param cable one_way_m, material, insulation and whether it lies in an engine space must be known
   * @param fixedOhm body and contacts
   * @param startV at the battery
   * @param inputW what the amplifier draws with the programme
   */
  public static FeedLine of(
      Cable cable,
      ReturnPath returnPath,
      double fixedOhm,
      double permittedDropV,
      double startV,
      double inputW) {
    LaidCable laid = LaidCable.main(cable);
    double length =
        returnPath == ReturnPath.CABLE ? Conductors.LOOP_LENGTH.at(laid.oneWayM()) : laid.oneWayM();
    return new FeedLine(
        LegBuilder.builder()
            .pointer("")
            .startV(startV)
            .inputW(inputW)
            .conductorM(length)
            .fixedOhm(fixedOhm)
            .permittedDropV(permittedDropV)
            .loudest(new Loudest(null, null, null))
            .cable(laid)
            .surroundings(
                laid.engineSpace() ? Ampacity.ENGINE_SPACE_FACTOR.at(laid.insulationC()) : 1)
            .fusing(new Leg.Fusing(LOADING, 1))
            .build());
  }

  /** Smallest standard cross-section that does, mm²; empty where none does. */
  public OptionalDouble smallestMm2() {
    return Sizing.metricSizes().filter(area -> leg.limit(area) == null).findFirst();
  }

  /** Whether conductors of so many mm² do: by their drop, what they may carry, and a fuse between. */
  public boolean does(double areaMm2) {
    return leg.limit(areaMm2) == null;
  }

  /** Resistance of the whole loop in ohm with conductors of so many mm². */
  public double loopOhm(double areaMm2) {
    return leg.loopOhm(areaMm2);
  }

  /** Current in A of the load through conductors of so many mm²; NaN where its power cannot pass. */
  public double currentA(double areaMm2) {
    return leg.current(leg.loopOhm(areaMm2));
  }

  /** What conductors of so many mm² may carry for long, A. */
  public double ampacityA(double areaMm2) {
    return leg.ampacityA(areaMm2);
  }

  /** Most power in W that passes the loop. */
  public double largestW(double areaMm2) {
    return ConstantPower.LARGEST.at(leg.startV(), loopOhm(areaMm2));
  }

  /**
   * What the fuse must be rated at least, A.
   *
   * @param meanA current that flows for minutes
   * @param lastingA full sine that is to last for seconds, or null
   */
  public static double leastFuseA(double meanA, Double lastingA) {
    double least = Fuse.LEAST_RATING.at(meanA, LOADING, 1);
    return lastingA == null ? least : Math.max(least, Fuse.LEAST_FOR_SINE.at(lastingA, 1));
  }

  /** The largest standard fuse of at most so many amperes; 0 where there is none. */
  public static double largestFuseA(double mostA) {
    return Fuse.largestUpTo(mostA);
  }

  /** The smallest standard fuse from one current in A to another; empty where there is none. */
  public static OptionalDouble fuseA(double leastA, double mostA) {
    Fuse fuse = Fuse.between(leastA, mostA);
    return fuse == null ? OptionalDouble.empty() : OptionalDouble.of(fuse.ratingA());
  }
}
