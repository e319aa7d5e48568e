package org.footwell.web.limits;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * The names of callers and the SHA-256 of their keys. A slow hash for passwords would protect nothing
 * more: a key is 256 bits by chance, not a word that can be tried, and each request would wait for it.
 * Two keys of one name are both good, so that one can follow the other.
 */
public final class KeyRing {

  static final KeyRing EMPTY = new KeyRing(List.of());

  /** Each request is held against all of them. */
  static final int MOST = 1_000;

  private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,63}");
  private static final Pattern HASH = Pattern.compile("[0-9a-fA-F]{64}");

  private final List<Key> keys;

  private KeyRing(List<Key> keys) {
    this.keys = List.copyOf(keys);
  }

  private static final class Key {
    private final String name;
    private final byte[] hash;

    Key(String name, byte[] hash) {
      this.name = name;
      this.hash = hash;
    }
  }

  /**
   * Reads keys from pairs of a name and a hash.
   *
   * @throws IllegalArgumentException with every fault, a line each, none of which repeats what was
   *     given: it may be a key
   */
  static KeyRing of(List<String> pairs, String called) {
    List<Key> keys = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < pairs.size(); i++) {
      String pair = pairs.get(i).strip();
      if (pair.isEmpty() || pair.startsWith("#")) {
        continue;
      }
      String[] sides = pair.split(":", 2);
      String fault = fault(sides, seen);
      if (fault == null) {
        keys.add(new Key(sides[0], HexFormat.of().parseHex(sides[1])));
      } else {
        faults.add(called + " " + (i + 1) + ": " + fault);
      }
    }
    if (keys.isEmpty() && faults.isEmpty()) {
      faults.add("must name a key, as name:hash");
    }
    if (keys.size() > MOST) {
      faults.add("must hold at most " + MOST + " keys, not " + keys.size());
    }
    if (!faults.isEmpty()) {
      throw new IllegalArgumentException(String.join("\n", faults));
    }
    return new KeyRing(keys);
  }

  private static String fault(String[] sides, Set<String> seen) {
    if (sides.length < 2) {
      return "must be a name and a hash with a colon between them";
    }
    if (!NAME.matcher(sides[0]).matches()) {
      return "the name must be of at most 64 letters, digits, dots, dashes and underscores, and"
          + " begin with a letter or a digit";
    }
    if (!HASH.matcher(sides[1]).matches()) {
      return "the hash must be of 64 hex digits, the SHA-256 of the key";
    }
    return seen.add(HexFormat.of().formatHex(HexFormat.of().parseHex(sides[1])))
        ? null
        : "the same key stands there twice";
  }

  boolean isEmpty() {
    return keys.isEmpty();
  }

  /** Whose key it is; all are compared in full, so that the time taken tells nothing. */
  Optional<String> nameOf(String key) {
    byte[] hash = sha256(key);
    String name = null;
    for (Key one : keys) {
      if (MessageDigest.isEqual(one.hash, hash)) {
        name = one.name;
      }
    }
    return Optional.ofNullable(name);
  }

  private static byte[] sha256(String key) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(key.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException everyPlatformHasIt) {
      throw new IllegalStateException(everyPlatformHasIt);
    }
  }
}
