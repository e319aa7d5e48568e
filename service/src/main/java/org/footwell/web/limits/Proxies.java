package org.footwell.web.limits;

import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.eclipse.jetty.util.InetAddressSet;

/**
 * The proxies whose word is taken on where a request came from. What anybody else says in
 * X-Forwarded-For is not looked at.
 */
public final class Proxies {

  /** The address that a request comes from is that of its caller. */
  public static final Proxies NONE = new Proxies(List.of());

  /** Nothing that would be looked up as a name. */
  private static final Pattern ADDRESS =
      Pattern.compile("\\d{1,3}(\\.\\d{1,3}){3}|[0-9a-fA-F.]*:[0-9a-fA-F:.]*");

  /** As some proxies write it, with a port or in brackets. */
  private static final Pattern WITH_PORT = Pattern.compile("(\\d[\\d.]+):\\d+|\\[(.+)](?::\\d+)?");

  private final InetAddressSet named = new InetAddressSet();

  private Proxies(List<String> blocks) {
    blocks.forEach(named::add);
  }

  /**
   * Reads addresses and blocks of them, comma separated.
   *
   * @throws IllegalArgumentException if one is neither
   */
  public static Proxies of(String list) {
    if (list.isBlank()) {
      return NONE;
    }
    List<String> blocks = Arrays.stream(list.split(",", -1)).map(String::strip).toList();
    for (String block : blocks) {
      if (!isBlock(block)) {
        throw new IllegalArgumentException(
            "must be addresses, or blocks such as 10.0.0.0/8 or fd00::/8, comma separated; "
                + block
                + " is neither");
      }
    }
    return new Proxies(blocks);
  }

  private static boolean isBlock(String block) {
    String[] sides = block.split("/", 2);
    InetAddress first = address(sides[0]);
    if (first == null) {
      return false;
    }
    if (sides.length == 1) {
      return true;
    }
    int bits = 8 * first.getAddress().length;
    if (!sides[1].matches("\\d{1,3}") || Integer.parseInt(sides[1]) > bits) {
      return false;
    }
    try {
      // A block whose address has bits beyond its prefix is taken by nobody's meaning.
      return new InetAddressSet().add(block);
    } catch (IllegalArgumentException beyondPrefix) {
      return false;
    }
  }

  /** An address as it is written, without asking anybody; null where it is none. */
  static InetAddress address(String text) {
    if (!ADDRESS.matcher(text).matches()) {
      return null;
    }
    try {
      return InetAddress.getByName(text);
    } catch (UnknownHostException malformed) {
      return null;
    }
  }

  /**
   * Where a request came from: the last address in front of all named proxies. What cannot be read
   * counts for whoever said it.
   *
   * @param peer who sent it
   * @param forwarded the values of X-Forwarded-For
   */
  InetAddress caller(InetAddress peer, List<String> forwarded) {
    InetAddress caller = peer;
    List<String> chain =
        forwarded.stream().flatMap(value -> Stream.of(value.split(",", -1))).toList();
    for (int i = chain.size() - 1; i >= 0 && named.test(caller); i--) {
      String hop = WITH_PORT.matcher(chain.get(i).strip()).replaceFirst("$1$2");
      InetAddress before = address(hop);
      if (before == null) {
        break;
      }
      caller = before;
    }
    return caller;
  }
}
