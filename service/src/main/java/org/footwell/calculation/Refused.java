package org.footwell.calculation;

import java.util.List;

/** The request can be read but not answered; carries every fault found. */
public final class Refused extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<Fault> faults;

  public Refused(List<Fault> faults) {
    super(faults.isEmpty() ? "refused" : faults.get(0).detail(), null, false, false);
    this.faults = List.copyOf(faults);
  }

  public List<Fault> faults() {
    return faults;
  }
}
