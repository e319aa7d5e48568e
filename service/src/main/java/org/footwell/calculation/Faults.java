package org.footwell.calculation;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/** Collects everything that is wrong with a request, so that one answer can tell it all. */
public final class Faults {

  /** More are not listed: a request with so many needs another look as a whole. */
  public static final int MOST = 100;

  private final UnaryOperator<String> rebase;
  private final Locale language;
  private final List<Supplier<Fault>> faults = new ArrayList<>(0);

  public Faults() {
    this(UnaryOperator.identity(), Reader.ANYONE.language());
  }

  Faults(UnaryOperator<String> rebase, Locale language) {
    this.rebase = rebase;
    this.language = language;
  }

  /** Adds a fault; the remark returned takes what it is about. */
  public Remark add(FaultCode code) {
    Remark remark = new Remark(code, rebase, null, language);
    if (faults.size() < MOST) {
      faults.add(remark::fault);
    }
    return remark;
  }

  /** Adds faults that are complete already. */
  void addAll(List<Fault> others) {
    others.forEach(fault -> faults.add(() -> fault));
  }

  /** Whether no more are listed. */
  public boolean full() {
    return faults.size() >= MOST;
  }

  public boolean none() {
    return faults.isEmpty();
  }

  public List<Fault> list() {
    return faults.stream().map(Supplier::get).distinct().limit(MOST).toList();
  }
}
