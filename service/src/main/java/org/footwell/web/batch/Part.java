package org.footwell.web.batch;

/** Part of the answer to a batch. How a problem is told depends on those told before it. */
interface Part {

  Part COMMA = of(new byte[] {','});
  Part LINE_END = of(new byte[] {'\n'});

  byte[] after(Told before);

  static Part of(byte[] bytes) {
    return before -> bytes;
  }
}
