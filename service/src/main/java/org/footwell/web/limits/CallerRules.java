package org.footwell.web.limits;

import java.nio.file.Path;
import java.util.Arrays;

/**
 * What callers must have and may do.
 *
 * @param keys that they must have
 * @param callsPerMinute each of them may make, 0 for any number
 * @param callsAtOnce that they may save up for
 * @param underWay requests each may have at a time, 0 for any number
 * @param proxies that say where a request came from
 */
public record CallerRules(
    Keys keys, int callsPerMinute, int callsAtOnce, int underWay, Proxies proxies) {

  /** Anybody may call as often as they like. */
  public static final CallerRules NONE = new CallerRules(Keys.NONE, 0, 0, 0, Proxies.NONE);

  /** Whoever says nothing of a number at once means a minute's. */
  public CallerRules {
    callsAtOnce = callsAtOnce == 0 ? callsPerMinute : callsAtOnce;
  }

  /**
   * Keys as the text of a setting, pairs separated by commas; none where it is empty.
   *
   * @throws IllegalArgumentException with every fault
   */
  public static Keys keys(String pairs) {
    if (pairs.isEmpty()) {
      return Keys.NONE;
    }
    KeyRing ring = KeyRing.of(Arrays.asList(pairs.split(",", -1)), "key");
    return () -> ring;
  }

  /**
   * Keys in a file; none where none is named.
   *
   * @throws IllegalArgumentException with every fault
   */
  public static Keys keyFile(String path) {
    return path.isEmpty() ? Keys.NONE : new KeyFile(Path.of(path), System::nanoTime);
  }

  /** Whether there is anything to hold callers to. */
  public boolean any() {
    return keys != Keys.NONE || countsCalls() || countsUnderWay();
  }

  boolean countsCalls() {
    return callsPerMinute > 0;
  }

  boolean countsUnderWay() {
    return underWay > 0;
  }
}
