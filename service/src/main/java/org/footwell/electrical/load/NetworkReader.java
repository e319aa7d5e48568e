package org.footwell.electrical.load;

import static org.footwell.electrical.load.LoadFault.COIL_OUT_OF_RANGE;
import static org.footwell.electrical.load.LoadFault.UNKNOWN_COIL;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.FaultCode;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.Remark;
import org.footwell.calculation.Run;
import org.footwell.calculation.text.Allowed;
import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Phrase;
import org.footwell.electrical.load.NetworkParser.Token;

/** Makes the network of coils from its notation and the list of coils. */
public final class NetworkReader {

  static final String NETWORK = "/network";

  private static final double LEAST_OHM = 0.1;
  private static final double MOST_OHM = 1000;

  private final Map<String, Coil> listed = new LinkedHashMap<>();
  private final Set<String> used = new HashSet<>();
  private final Refusing to;
  private int position;
  private boolean sound = true;

  private NetworkReader(List<Coil> coils, Refusing to) {
    this.to = to;
    coils.forEach(coil -> listed.putIfAbsent(coil.name(), coil));
  }

  /** The network of the coils listed, or nothing where it names coils wrongly, which is refused. */
  static Optional<Network<Coil>> of(Network<Token> written, List<Coil> coils, Refusing to) {
    NetworkReader wiring = new NetworkReader(coils, to);
    Network<Coil> network =
        written.fold(token -> Network.leaf(wiring.coil(token)), Network::series, Network::parallel);
    return wiring.sound ? Optional.of(network) : Optional.empty();
  }

  /** The same of a request whose rules hold. */
  static Network<Coil> of(WiringLoadRequest q, Run run) {
    return of(parsed(q.network(), NETWORK, run), Coil.each(q.coils()), run)
        .orElseThrow(run::refused);
  }

  /**
   * A network of words as they stand in it, names of coils and numbers in ohm; refuses one that cannot
   * be read.
   *
   * @param at JSON Pointer to the network
   */
  public static Network<String> words(String text, String at, Run run) {
    return parsed(text, at, run)
        .fold(token -> Network.leaf(token.text()), Network::series, Network::parallel);
  }

  /**
   * The words of a network that was read before.
   *
   * @throws IllegalArgumentException if it cannot be read
   */
  public static Network<String> words(String text) {
    try {
      return NetworkParser.parse(text)
          .fold(token -> Network.leaf(token.text()), Network::series, Network::parallel);
    } catch (Unreadable e) {
      throw new IllegalArgumentException(text, e);
    }
  }

  private static Network<Token> parsed(String network, String at, Run run) {
    return parse(network, at, run).orElseThrow(run::refused);
  }

  /** The network as it is written, or nothing where it cannot be read, which is refused. */
  static Optional<Network<Token>> parse(String network, String at, Refusing to) {
    try {
      return Optional.of(NetworkParser.parse(network));
    } catch (Unreadable why) {
      Remark remark = to.refuse(why.code()).at(at).given(why.character()).allowed(why.expected());
      if (why.shows()) {
        remark.with("found", why.found());
      }
      return Optional.empty();
    }
  }

  private Coil coil(Token token) {
    position++;
    if (token.isNumber()) {
      return unnamed(token);
    }
    String name = token.text();
    Coil coil = listed.get(name);
    if (coil == null) {
      refuseUnknown(token);
      return Coil.rated(name, 1, NETWORK);
    }
    if (!used.add(name)) {
      refuse(CoreFault.DUPLICATE).given(name);
    }
    return coil;
  }

  /** A coil that the network gives by its impedance alone; called by its place from the left. */
  private Coil unnamed(Token token) {
    double ohm = Double.parseDouble(token.text());
    if (!(ohm >= LEAST_OHM && ohm <= MOST_OHM)) {
      refuse(COIL_OUT_OF_RANGE)
          .given(token.text())
          .allowed(Allowed.between(LEAST_OHM, MOST_OHM, "ohm"))
          .with("character", token.character());
    }
    return Coil.rated("coil " + position, ohm, NETWORK);
  }

  private void refuseUnknown(Token token) {
    refuse(UNKNOWN_COIL)
        .given(token.text())
        .allowed(
            listed.isEmpty() ? Phrase.of(NetworkWords.OHM_OR_NAME) : Allowed.oneOf(listed.keySet()))
        .with("character", token.character())
        .with("nearest", Names.didYouMean(token.text(), listed.keySet()));
  }

  private Remark refuse(FaultCode code) {
    sound = false;
    return to.refuse(code).at(NETWORK);
  }
}
