package org.footwell.fuzz;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Where the search by coverage enters. It knows these two names and nothing else of a reader. */
public final class FuzzEntry {

  /** System property that names the reader. */
  static final String READER = "footwell.fuzz.reader";

  /** Stands for all of them: the first byte then says which is meant. */
  static final String ALL = "ALL";

  private static final String CHOSEN = System.getProperty(READER);
  private static final Map<FuzzedReader, Target> TARGETS = new EnumMap<>(FuzzedReader.class);

  private FuzzEntry() {}

  /** What is prepared at first use is no cost of the input that happens to come first. */
  public static void fuzzerInitialize() throws Throwable {
    for (FuzzedReader reader : FuzzedReader.values()) {
      if (CHOSEN.equals(ALL) || CHOSEN.equals(reader.name())) {
        Target target = reader.target();
        TARGETS.put(reader, target);
        for (byte[] seed : target.seeds()) {
          target.read(seed);
        }
      }
    }
  }

  /** Has the reader that is meant read. */
  public static void fuzzerTestOneInput(byte[] given) throws Throwable {
    if (!CHOSEN.equals(ALL)) {
      Effort.read(TARGETS.get(FuzzedReader.valueOf(CHOSEN)), given);
    } else if (given.length > 0) {
      FuzzedReader[] readers = FuzzedReader.values();
      FuzzedReader meant = readers[(given[0] & 0xFF) % readers.length];
      Effort.read(TARGETS.get(meant), Arrays.copyOfRange(given, 1, given.length));
    }
  }

  /** Something for one of them where all are searched. */
  static byte[] forAll(FuzzedReader reader, byte[] given) {
    byte[] marked = new byte[given.length + 1];
    marked[0] = (byte) List.of(FuzzedReader.values()).indexOf(reader);
    System.arraycopy(given, 0, marked, 1, given.length);
    return marked;
  }
}
