package org.footwell.fuzz;

/** Where the search by coverage enters: it knows no more of a reader than these two names. */
public final class FuzzEntry {

  /** System property that names the reader. */
  static final String READER = "footwell.fuzz.reader";

  private static final Target TARGET = FuzzedReader.valueOf(System.getProperty(READER)).target();

  private FuzzEntry() {}

  /** What is prepared at first use is no cost of the input that happens to come first. */
  public static void fuzzerInitialize() throws Throwable {
    for (byte[] seed : TARGET.seeds()) {
      TARGET.read(seed);
    }
  }

  public static void fuzzerTestOneInput(byte[] given) throws Throwable {
    Effort.read(TARGET, given);
  }
}
