package org.footwell.growth;

/**
 * Something that makes a request larger.
 *
 * @param path dotted, {@code *} standing for the index in a list
 * @param now how large it is
 * @param most how large the contract lets it be
 */
record Size(String path, Kind kind, int now, int most) {

  /** What is large. */
  enum Kind {
    /** A list, by its entries. */
    LIST,
    /** The channels of a plan, each with its own drivers and its own output of an amplifier. */
    CHANNELS,
    /** A number that says how many there are. */
    COUNT,
    /** A part that is not there, and that another request shows: 0 or 1. */
    LENT
  }
}
