package org.footwell.web.attack;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Values that have broken programs elsewhere. */
final class Nasty {

  private static final List<String> NUMBERS =
      List.of(
          "0",
          "-0.0",
          "-1",
          "1e-320",
          "1e308",
          "-1e308",
          "1e400",
          "-1e9999",
          "9007199254740993",
          "2147483648",
          "-9223372036854775809",
          "1e19",
          "0.1e1",
          "1.0",
          "1E+2",
          "NaN",
          "Infinity",
          "+1",
          "01",
          ".5",
          "5.",
          "0x10",
          "1_000",
          "1e2147483648",
          "0." + "0".repeat(90) + "1",
          "9".repeat(99),
          "9".repeat(101),
          "1".repeat(5_000));

  private static final List<String> TEXTS =
      List.of(
          "",
          " ",
          "\u0000",
          "\u0001",
          "\u007f",
          "\u0085",
          "\u2028",
          "\uFEFF",
          "\uFFFF",
          "\uD800",
          "\u202Eabc",
          "e\u0301",
          "\uD83D\uDE00",
          "ß",
          "İ",
          "null",
          "true",
          "1",
          "../../etc/passwd",
          "C:\\x",
          "${jndi:ldap://127.0.0.1/x}",
          "{value}",
          "{name:own}",
          "%s%n",
          "%00",
          "\r\nX: y",
          "<script>alert(1)</script>",
          "]]>",
          "&amp;",
          "'; DROP TABLE x;--",
          "=1+1",
          "@SUM(A1)",
          "a.b",
          "a/b",
          "~1~0",
          "*",
          "0",
          "-1",
          "999999999999",
          "(".repeat(200),
          "4||".repeat(40),
          "a".repeat(300),
          "x".repeat(99_999),
          "y".repeat(100_001));

  private static final List<String> OTHERS =
      List.of(
          "null",
          "true",
          "false",
          "[]",
          "{}",
          "[[]]",
          "[null]",
          "{\"\":0}",
          "\"\"",
          "\"1\"",
          "[1,2,3]");

  private Nasty() {}

  static <T> T one(List<T> list, Random random) {
    return list.get(random.nextInt(list.size()));
  }

  static String number(Random random) {
    return one(NUMBERS, random);
  }

  /** Seldom one of the long ones, which cost more than they find. */
  static String text(Random random) {
    String text = one(TEXTS, random);
    return text.length() < 1_000 || random.nextInt(10) == 0 ? text : text.substring(0, 100);
  }

  /** A value as it stands in JSON, not always well-formed. */
  static String json(Random random) {
    return switch (random.nextInt(3)) {
      case 0 -> number(random);
      case 1 -> quoted(text(random));
      default -> one(OTHERS, random);
    };
  }

  /** A text in JSON with every character that is not plain escaped. */
  static String quoted(String text) {
    StringBuilder out = new StringBuilder("\"");
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < ' ' || c > '~' || c == '"' || c == '\\') {
        out.append(String.format("\\u%04x", (int) c));
      } else {
        out.append(c);
      }
    }
    return out.append('"').toString();
  }

  /** Bytes that differ in a few places, are cut off, doubled, longer or in other letters. */
  static byte[] bytes(byte[] from, Random random) {
    List<Byte> bytes = new ArrayList<>();
    for (byte b : from) {
      bytes.add(b);
    }
    for (int i = random.nextInt(4); i >= 0 && !bytes.isEmpty(); i--) {
      int at = random.nextInt(bytes.size());
      switch (random.nextInt(5)) {
        case 0 -> bytes.set(at, (byte) random.nextInt(256));
        case 1 -> bytes.add(at, (byte) random.nextInt(256));
        case 2 -> bytes.remove(at);
        case 3 -> bytes.subList(at, bytes.size()).clear();
        default -> bytes.addAll(at, List.copyOf(bytes.subList(0, Math.min(at, 2_000))));
      }
    }
    byte[] changed = new byte[bytes.size()];
    for (int i = 0; i < changed.length; i++) {
      changed[i] = bytes.get(i);
    }
    return changed;
  }
}
