package org.footwell.fitting.carpentry;

import org.footwell.calculation.text.Names;
import org.footwell.calculation.text.Words;

/** A dimension of the room inside a box. */
enum Inside implements Words {
  WIDTH,
  HEIGHT,
  DEPTH;

  /** Where its outer measure stands in the request. */
  String at() {
    return "/" + Names.of(this) + "_mm";
  }
}
