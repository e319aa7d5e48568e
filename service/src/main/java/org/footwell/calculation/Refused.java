package org.footwell.calculation;

import java.util.List;
import org.footwell.calculation.text.Reader;

/** The request can be read but not answered; carries every fault found. */
public final class Refused extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient Faults faults;

  public Refused(Faults faults) {
    super(null, null, false, false);
    this.faults = faults;
  }

  /** The faults as they read in English. */
  public List<Fault> faults() {
    return faults.list();
  }

  /** The faults in the language of a reader. */
  public List<Fault> faults(Reader reader) {
    return faults.list(reader);
  }

  /** Those of a calculation within another become its own. */
  Faults collected() {
    return faults;
  }

  @Override
  public String getMessage() {
    return faults.none() ? "refused" : faults().get(0).detail();
  }
}
