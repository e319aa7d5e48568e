package org.footwell.web.limits;

/** Where the keys that callers must have stand. */
public interface Keys {

  /** Nobody needs a key. */
  Keys NONE = () -> KeyRing.EMPTY;

  /** The keys that hold now; without any, nobody needs one. */
  KeyRing current();
}
