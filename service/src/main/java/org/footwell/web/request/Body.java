package org.footwell.web.request;

/** The body of an answer. One that is sent again and again is coded once. */
public final class Body {

  private final byte[] plain;
  private volatile byte[] coded;

  public Body(byte[] plain) {
    this.plain = plain;
  }

  int size() {
    return plain.length;
  }

  byte[] in(Coding coding) {
    if (coding == Coding.IDENTITY) {
      return plain;
    }
    if (coded == null) {
      coded = GzipOutput.coded(plain);
    }
    return coded;
  }

  /** A strong tag: each coding has its own. */
  String tag(String version, Coding coding) {
    return EntityTag.of(version, plain, coding);
  }
}
