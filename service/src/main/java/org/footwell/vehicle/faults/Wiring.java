package org.footwell.vehicle.faults;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.footwell.calculation.Run;
import org.footwell.electrical.load.Network;
import org.footwell.electrical.load.NetworkReader;

/** Networks of a plan with something wrong in them, as text. */
final class Wiring {

  /** What an interrupted coil lets through is nothing beside any load. */
  private static final String OPEN_OHM = "1000000";

  /** Two wires that touch, ohm; common practice, no source. */
  private static final String TOUCHING_OHM = "0.01";

  private final Run run;

  Wiring(Run run) {
    this.run = run;
  }

  private Network<String> read(String network) {
    return NetworkReader.words(network, "", run);
  }

  boolean has(String network, String coil) {
    return network != null && read(network).coils().contains(coil);
  }

  /**
   * A network in which no current flows through a coil. Where it is the only one of its driver there,
   * it stays behind the break, for the driver is still in its place.
   */
  String opened(String network, String coil) {
    return instead(network, coil, OPEN_OHM, "(" + OPEN_OHM + " + " + coil + ")");
  }

  /** A network in which the ends of a coil touch. */
  String shorted(String network, String coil) {
    return instead(network, coil, TOUCHING_OHM, "(" + TOUCHING_OHM + " || " + coil + ")");
  }

  private String instead(String network, String coil, String alone, String together) {
    Network<String> words = read(network);
    String driver = driver(coil);
    boolean others =
        words.coils().stream().anyMatch(word -> !word.equals(coil) && driver(word).equals(driver));
    return words.text(word -> word.equals(coil) ? (others ? alone : together) : word);
  }

  private static String driver(String coil) {
    int dot = coil.indexOf('.');
    return dot < 0 || Character.isDigit(coil.charAt(0)) ? coil : coil.substring(0, dot);
  }

  /** The same coils with one group, or all of them, in series instead of in parallel or back. */
  List<String> otherwise(String network) {
    Network<String> planned = read(network);
    Set<String> texts = new LinkedHashSet<>();
    for (Network<String> one : turned(planned)) {
      texts.add(text(one));
    }
    texts.add(text(allTurned(planned)));
    texts.remove(text(planned));
    return List.copyOf(texts);
  }

  private static String text(Network<String> network) {
    return network.text(UnaryOperator.identity());
  }

  /** Every network that differs by one group. */
  private static List<Network<String>> turned(Network<String> network) {
    List<Network<String>> parts = parts(network);
    List<Network<String>> all = new ArrayList<>();
    if (parts.isEmpty()) {
      return all;
    }
    boolean series = network instanceof Network.Series<String>;
    all.add(joined(!series, parts));
    for (int i = 0; i < parts.size(); i++) {
      for (Network<String> other : turned(parts.get(i))) {
        List<Network<String>> changed = new ArrayList<>(parts);
        changed.set(i, other);
        all.add(joined(series, changed));
      }
    }
    return all;
  }

  private static Network<String> allTurned(Network<String> network) {
    return network.fold(Network::leaf, Network::parallel, Network::series);
  }

  private static Network<String> joined(boolean series, List<Network<String>> parts) {
    return series ? Network.series(parts) : Network.parallel(parts);
  }

  private static List<Network<String>> parts(Network<String> network) {
    if (network instanceof Network.Series<String> series) {
      return series.parts();
    }
    return network instanceof Network.Parallel<String> parallel ? parallel.parts() : List.of();
  }
}
