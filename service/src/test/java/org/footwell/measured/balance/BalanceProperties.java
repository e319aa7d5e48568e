package org.footwell.measured.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.footwell.measured.response.MadeUpResponse;

class BalanceProperties {

  private static LevelAndBalanceResult result(double one, double other) {
    BalanceSession session = new BalanceSession().microphone("m", null);
    MadeUpResponse click = MadeUpResponse.click(9600, 2000, 1);
    session.channel("a", 200.0, 5000.0, click.times(one));
    session.channel("b", 200.0, 5000.0, click.reflected(0.5, 31).times(other));
    return session.result();
  }

  @Property(tries = 20)
  void trimsNeverLiftAndLeaveTheQuietestAlone(
      @ForAll @DoubleRange(min = 0.01, max = 1) double one,
      @ForAll @DoubleRange(min = 0.01, max = 1) double other) {
    LevelAndBalanceResult result = result(one, other);
    double a = result.channels().get(0).trimDb();
    double b = result.channels().get(1).trimDb();
    assertEquals(0, Math.max(a, b), 0);
    assertEquals(Math.min(a, b), result.largestTrimDb(), 0);
    assertTrue(result.headroomCostDb() >= 0, result::toString);
    assertEquals(
        result.channels().get(0).overTargetDb() + a,
        result.channels().get(1).overTargetDb() + b,
        1e-9);
  }

  @Property(tries = 20)
  void aChannelTwiceAsLoudIsSixDecibelsUp(@ForAll @DoubleRange(min = 0.01, max = 0.5) double one) {
    double before = result(one, 1).channels().get(0).levelDb();
    assertEquals(before + 6.0206, result(2 * one, 1).channels().get(0).levelDb(), 1e-4);
  }
}
