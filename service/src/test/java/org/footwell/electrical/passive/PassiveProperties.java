package org.footwell.electrical.passive;

import static org.footwell.electrical.passive.PassiveFilters.filter;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.footwell.loudspeaker.Ladder;
import org.footwell.parts.Filter;
import org.footwell.parts.Filter.Kind;
import org.footwell.parts.PreferredSeries;
import org.footwell.physics.Phasor;

class PassiveProperties {

  @Property
  void aHighPassIsALowPassMirroredAtItsCorner(
      @ForAll Kind kind,
      @ForAll @IntRange(min = 1, max = 4) int order,
      @ForAll @DoubleRange(min = 0.05, max = 20) double x) {
    Filter filter = filter(kind, order, 1000);
    Assume.that(filter.possible());
    Phasor load = new Phasor(4, 0);
    Ladder low = new Ladder(LadderSynthesis.lowPass(filter, 4), f -> load);
    Ladder high = new Ladder(LadderSynthesis.highPass(filter, 4), f -> load);
    assertEquals(low.levelDb(1000 * x), high.levelDb(1000 / x), 1e-9);
  }

  @Property
  void elementsOfALadderAreAlwaysPositive(
      @ForAll Kind kind, @ForAll @IntRange(min = 1, max = 4) int order) {
    Filter filter = filter(kind, order, 1000);
    Assume.that(filter.possible());
    for (double g : LadderSynthesis.prototype(filter)) {
      assertTrue(g > 0);
    }
  }

  @Property
  void aPreferredValueIsItsOwnNearestAndNoneIsFarAway(
      @ForAll PreferredSeries series, @ForAll @DoubleRange(min = 0.01, max = 9999) double value) {
    double nearest = series.nearest(value);
    assertEquals(nearest, series.nearest(nearest));
    // Widest step of E6 is 2.2 to 3.3 or 1 to 1.5: half of it is a factor of √1.5.
    assertTrue(Math.abs(Math.log(nearest / value)) <= Math.log(Math.sqrt(1.5)) + 1e-12);
    assertEquals(10 * nearest, series.nearest(10 * value), 1e-9 * nearest);
  }

  @Property
  void aPadKeepsTheLoadWhateverItsAttenuation(
      @ForAll @DoubleRange(min = 0.1, max = 40) double db,
      @ForAll @DoubleRange(min = 0.5, max = 100) double ohm) {
    double across = FilterParts.PAD_SHUNT.at(ohm, db);
    double both = across * ohm / (across + ohm);
    assertEquals(ohm, FilterParts.PAD_SERIES.at(ohm, db) + both, 1e-9 * ohm);
    assertEquals(-db, 20 * Math.log10(both / ohm), 1e-9 * db + 1e-9);
  }
}
