package org.footwell.catalogue.row;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Names met so far, in little memory: Bloom filters, each twice as large as the one before, as soon as that
 * has its fill. It never forgets a name. It may take a new one for a known one: with 8 MB for the first
 * million, among a million once in some ten thousand catalogues, among ten million once in a hundred; with
 * 4 MB, among a million once in two.
 */
public final class SeenNames {

  private static final int PROBES = 12;

  /** Names that the first filter is made for. */
  private static final int FIRST = 1 << 20;

  /** The largest filter, bits: more have no index. */
  private static final int LARGEST = 1 << 30;

  private final List<BitSet> full = new ArrayList<>();
  private final int bitsOfName;
  private BitSet open;

  /** How many names still go into the open filter. */
  private int room;

  /**
   * No names yet.
   *
   * @param megabytes of memory for the first million of them, a power of two
   */
  public SeenNames(int megabytes) {
    this.bitsOfName = (megabytes << 23) / FIRST;
    begin(FIRST);
  }

  /** Notes a name; false if it was there already. */
  public boolean add(String name) {
    long hash = hash(name);
    for (BitSet names : full) {
      if (holds(names, hash)) {
        return false;
      }
    }
    boolean added = note(hash);
    if (added && --room == 0) {
      full.add(open);
      begin(Math.min(2 * (open.size() / bitsOfName), LARGEST / bitsOfName));
    }
    return added;
  }

  private static boolean holds(BitSet names, long hash) {
    for (int i = 0; i < PROBES; i++) {
      if (!names.get(bit(hash, i, names.size()))) {
        return false;
      }
    }
    return true;
  }

  private boolean note(long hash) {
    boolean added = false;
    for (int i = 0; i < PROBES; i++) {
      int bit = bit(hash, i, open.size());
      added |= !open.get(bit);
      open.set(bit);
    }
    return added;
  }

  /** An empty filter for so many names. */
  private void begin(int names) {
    room = names;
    open = new BitSet(names * bitsOfName);
  }

  private static int bit(long hash, int probe, int size) {
    return (int) ((hash + probe * (hash >>> 32 | 1)) & (size - 1));
  }

  /** FNV-1a over the characters, mixed once more so that all bits depend on all of them. */
  private static long hash(String name) {
    long hash = 0xcbf29ce484222325L;
    for (int i = 0; i < name.length(); i++) {
      hash = (hash ^ name.charAt(i)) * 0x100000001b3L;
    }
    hash = (hash ^ hash >>> 33) * 0xff51afd7ed558ccdL;
    return hash ^ hash >>> 33;
  }
}
