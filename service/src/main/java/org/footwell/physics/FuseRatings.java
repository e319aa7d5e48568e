package org.footwell.physics;

import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.footwell.calculation.Source;

/** Rated currents of fuse-links for road vehicles, smallest first. */
public final class FuseRatings {

  /**
   * The parts of the standard and what they cover were checked against its abstracts; the list of
   * values was typed from memory.
   */
  public static final Source ISO_8820 =
      Source.of(
          "ISO 8820, Road vehicles: fuse-links; part 3: blade types C and E, to 100 A; part 5:"
              + " bolt-down strips, 30 to 500 A (rated values and opening times typed from memory)");

  /** Rated currents of blade type C, A; lists of values disagree on 35 A. */
  private static final double[] BLADE = {1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35};

  /** Rated currents to be had both as blade type E and as strip, A. */
  private static final double[] BOTH = {40, 50, 60, 70, 80, 100};

  /** Rated currents of strips only, A. */
  private static final double[] STRIP = {125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500};

  private FuseRatings() {}

  /** To be had as blades of type C. */
  public static DoubleStream bladesA() {
    return DoubleStream.of(BLADE);
  }

  /** To be had both as blades of type E and as bolt-down strips. */
  public static DoubleStream bladesOrStripsA() {
    return DoubleStream.of(BOTH);
  }

  /** To be had as bolt-down strips only. */
  public static DoubleStream stripsA() {
    return DoubleStream.of(STRIP);
  }

  /** All of them. */
  public static DoubleStream allA() {
    return Stream.of(BLADE, BOTH, STRIP).flatMapToDouble(DoubleStream::of);
  }
}
