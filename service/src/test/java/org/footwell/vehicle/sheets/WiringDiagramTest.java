package org.footwell.vehicle.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.footwell.electrical.load.Network;
import org.footwell.electrical.load.NetworkReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WiringDiagramTest {

  private static final Pattern WIDTH = Pattern.compile("style=\"width: (\\d+)px\"");
  private static final Pattern SEEN = Pattern.compile("viewBox=\"0 0 (\\d+) (\\d+)\"");

  @ParameterizedTest
  @ValueSource(strings = {" + ", " || "})
  void theLargestNetworkStaysOnItsPage(String joined) {
    String network =
        String.join(joined, Stream.iterate(1, n -> n + 1).limit(32).map(n -> "coil." + n).toList());
    String svg = svg(NetworkReader.words(network));
    int wide = Integer.parseInt(first(WIDTH, svg, 1));
    double ratio =
        Double.parseDouble(first(SEEN, svg, 2)) / Double.parseDouble(first(SEEN, svg, 1));
    assertTrue(wide <= 670, svg);
    assertTrue((wide - 0.5) * ratio <= 850, svg);
  }

  @Test
  void everyCoilHasItsBoxAndItsNameIsText() {
    String svg = svg(Network.parallel(List.of(Network.leaf("<b>"), Network.leaf("other"))));
    assertEquals(2, svg.split("<rect", -1).length - 1);
    assertTrue(svg.contains(">&lt;b&gt;<"), svg);
  }

  private static String svg(Network<String> network) {
    return WiringDiagram.svg("id", "title", List.of(), network);
  }

  private static String first(Pattern pattern, String text, int group) {
    Matcher found = pattern.matcher(text);
    assertTrue(found.find(), text);
    return found.group(group);
  }
}
