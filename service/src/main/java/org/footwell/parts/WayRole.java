package org.footwell.parts;

/** What a driver is used as. */
public enum WayRole {
  /** The lowest octaves only, from a place the ear must not find. */
  SUBWOOFER,
  /** Bass, or bass and middle. */
  WOOFER,
  /** The middle. */
  MIDRANGE,
  /** The top. */
  TWEETER,
  /** As much as it can. */
  FULL_RANGE;

  /** Whether two roles tell which lies below; full range may stand anywhere. */
  public static boolean decideOrder(WayRole one, WayRole other) {
    return one != null && other != null && one != other && one != FULL_RANGE && other != FULL_RANGE;
  }
}
