package org.footwell.electrical.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.footwell.Answers;
import org.footwell.electrical.load.NetworkParser.Token;
import org.footwell.electrical.load.WiringLoadResult.CoilShare;

class NetworkProperties {

  private static final double CLOSE = 1e-9;

  /** Networks of up to 16 coils between 0.5 and 64 ohm. */
  @Provide
  Arbitrary<Network<Double>> networks() {
    Arbitrary<Network<Double>> coil =
        Arbitraries.doubles().between(0.5, 64).ofScale(2).map(Network::leaf);
    return Arbitraries.recursive(() -> coil, NetworkProperties::grouped, 0, 4);
  }

  private static Arbitrary<Network<Double>> grouped(Arbitrary<Network<Double>> part) {
    Arbitrary<List<Network<Double>>> parts = part.list().ofSize(2);
    return Arbitraries.oneOf(parts.map(Network::series), parts.map(Network::parallel));
  }

  private static WiringLoadResult result(String network) {
    return Answers.of(new WiringLoad(), Requests.network(network)).result();
  }

  private static WiringLoadResult result(Network<Double> network) {
    return result(text(network));
  }

  private static String text(Network<Double> network) {
    return network.text(ohm -> Double.toString(ohm));
  }

  @Property
  void likeCoilsInParallelDivideAndInSeriesMultiply(
      @ForAll @DoubleRange(min = 0.5, max = 100) double ohm,
      @ForAll @IntRange(min = 1, max = 32) int n) {
    List<String> coils = Collections.nCopies(n, Double.toString(ohm));
    assertEquals(ohm / n, result(String.join("||", coils)).loadOhm(), CLOSE * ohm);
    assertEquals(ohm * n, result(String.join("+", coils)).loadOhm(), CLOSE * ohm * n);
    assertTrue(result(String.join("||", coils)).evenSharing());
    assertTrue(result(String.join("+", coils)).evenSharing());
  }

  /** Exchanging series and parallel and inverting every resistance inverts the whole. */
  @Property
  void seriesAndParallelAreDual(@ForAll("networks") Network<Double> network) {
    Network<Double> dual =
        network.fold(ohm -> Network.leaf(64 / ohm), Network::parallel, Network::series);
    double ohm = result(network).loadOhm();
    assertEquals(64 / ohm, result(dual).loadOhm(), CLOSE * 64 / ohm);
  }

  @Property
  void sharesOfPowerAddUpToOneAndFollowFromTheVoltages(
      @ForAll("networks") Network<Double> network) {
    WiringLoadResult result = result(network);
    double sum = 0;
    for (CoilShare coil : result.coils()) {
      sum += coil.powerShare();
      assertTrue(coil.voltageShare() > 0 && coil.voltageShare() <= 1 + CLOSE);
      // U²/R of the coil over U²/R of the whole.
      double byVoltage = Math.pow(coil.voltageShare(), 2) * result.loadOhm() / coil.ratedOhm();
      assertEquals(byVoltage, coil.powerShare(), CLOSE);
    }
    assertEquals(1, sum, CLOSE);
  }

  @Property
  void whatIsWrittenIsReadBackAsTheSame(@ForAll("networks") Network<Double> network)
      throws Unreadable {
    Network<Double> read =
        NetworkParser.parse(text(network))
            .fold(
                (Token token) -> Network.leaf(Double.valueOf(token.text())),
                Network::series,
                Network::parallel);
    assertEquals(network, read);
  }

  @Property
  void orderOfPartsDoesNotMatter(@ForAll("networks") Network<Double> network) {
    Network<Double> reversed =
        network.fold(
            Network::leaf,
            parts -> Network.series(reversed(parts)),
            parts -> Network.parallel(reversed(parts)));
    WiringLoadResult there = result(network);
    WiringLoadResult back = result(reversed);
    assertEquals(there.loadOhm(), back.loadOhm(), CLOSE * there.loadOhm());
    assertEquals(there.evenSharing(), back.evenSharing());
    List<CoilShare> inOrder = reversed(back.coils());
    for (int i = 0; i < inOrder.size(); i++) {
      assertEquals(there.coils().get(i).powerShare(), inOrder.get(i).powerShare(), CLOSE);
      assertEquals(there.coils().get(i).voltageShare(), inOrder.get(i).voltageShare(), CLOSE);
    }
  }

  private static <T> List<T> reversed(List<T> list) {
    List<T> reversed = new ArrayList<>(list);
    Collections.reverse(reversed);
    return reversed;
  }

  @Property
  void loadGrowsWithItsImpedances(
      @ForAll("networks") Network<Double> network,
      @ForAll @DoubleRange(min = 1, max = 4) double factor) {
    Network<Double> scaled =
        network.fold(ohm -> Network.leaf(ohm * factor), Network::series, Network::parallel);
    double ohm = result(network).loadOhm();
    assertEquals(ohm * factor, result(scaled).loadOhm(), CLOSE * ohm * factor);
  }

  @Property
  void anyTextIsAnsweredOrRefusedWithACharacterInIt(@ForAll("texts") String text) {
    try {
      assertTrue(NetworkParser.parse(text).coils().size() <= NetworkParser.MOST_COILS);
    } catch (Unreadable why) {
      assertTrue(why.character() >= 1 && why.character() <= text.length() + 1);
    }
  }

  @Provide
  Arbitrary<String> texts() {
    return Arbitraries.strings().withChars("48.()+|ab_ %7C2B,").ofMaxLength(60);
  }
}
