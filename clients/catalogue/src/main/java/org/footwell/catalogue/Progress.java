package org.footwell.catalogue;

import java.util.Locale;

/** A bar on the standard error of a terminal, redrawn in place, and what is said meanwhile. */
final class Progress implements AutoCloseable {

  private static final int WIDTH = 30;
  private static final long REDRAW_NS = 200_000_000;
  private static final String ERASE_LINE = "\r\u001b[K";

  private final boolean shown;
  private final long start = System.nanoTime();
  private long nextDraw = start;
  private boolean drawn;

  /**
   * Begins.
   *
   * @param shown false where there is no terminal
   */
  Progress(boolean shown) {
    this.shown = shown;
  }

  /**
   * Shows how far the check is.
   *
   * @param share of the catalogue that was read, or negative where that is not known
   */
  synchronized void show(long rows, double share) {
    long now = System.nanoTime();
    if (shown && now - nextDraw >= 0) {
      nextDraw = now + REDRAW_NS;
      drawn = true;
      System.err.print(ERASE_LINE + line(rows, share, (now - start) / 1e9));
      System.err.flush();
    }
  }

  /** Says something in a line of its own, terminal or not. */
  synchronized void say(String sentence) {
    erase();
    System.err.println(sentence);
  }

  static String line(long rows, double share, double seconds) {
    String speed = String.format(Locale.ROOT, "%,d rows, %,.0f a second", rows, rows / seconds);
    if (share < 0) {
      return speed;
    }
    int full = (int) Math.round(share * WIDTH);
    return String.format(
        Locale.ROOT,
        "[%s%s] %3.0f %%  %s",
        "#".repeat(full),
        ".".repeat(WIDTH - full),
        100 * share,
        speed);
  }

  @Override
  public void close() {
    erase();
  }

  synchronized void erase() {
    if (drawn) {
      drawn = false;
      System.err.print(ERASE_LINE);
      System.err.flush();
    }
  }
}
