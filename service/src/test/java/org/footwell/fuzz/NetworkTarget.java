package org.footwell.fuzz;

import static org.footwell.fuzz.Refusals.requireEqual;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.footwell.calculation.Engine;
import org.footwell.calculation.text.Reader;
import org.footwell.electrical.load.Network;
import org.footwell.electrical.load.NetworkReader;
import org.footwell.electrical.load.WiringLoad;
import org.footwell.web.request.Endpoint;

/** Circuit notation: what is read and written in it is the same network, and has a load or is refused. */
final class NetworkTarget implements Target {

  private static final Endpoint<?, ?> ENDPOINT =
      new Endpoint<>(new WiringLoad(), new Engine(), Duration.ofSeconds(10));

  @Override
  public void read(byte[] given) throws Exception {
    String text = new String(given, StandardCharsets.UTF_8);
    Network<String> network = words(text);
    if (network != null) {
      requireEqual(network, words(network.text(word -> word)), "written and read again");
    }
    Refusals.orNull(
        () -> ENDPOINT.answerCells(Map.of("network", text), true, Reader.ANYONE).answer());
  }

  private static Network<String> words(String text) {
    try {
      return NetworkReader.words(text);
    } catch (IllegalArgumentException unreadable) {
      return null;
    }
  }

  @Override
  public List<byte[]> seeds() {
    return Stream.of(
            "(4+4)||(4+4)", "8", "2 || 2.5 + .5", "((4||4)+4)||(8+front_left)", "4,5 | 4", "4%2B4")
        .map(text -> text.getBytes(StandardCharsets.UTF_8))
        .toList();
  }
}
