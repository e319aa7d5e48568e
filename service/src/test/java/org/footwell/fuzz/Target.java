package org.footwell.fuzz;

import java.util.List;

/** A reader, and what must hold of it whatever it is given. */
public interface Target {

  /**
   * Reads.
   *
   * @throws Throwable whatever is not a refusal that callers are told: that is a fault of the reader
   */
  void read(byte[] given) throws Throwable;

  /** What it can read: the search begins there. */
  List<byte[]> seeds();
}
