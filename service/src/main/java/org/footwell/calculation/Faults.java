package org.footwell.calculation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.footwell.calculation.text.Reader;

/**
 * Collects everything that is wrong with a request, so that one answer can tell it all. It is put
 * into words when it is told, in the language of who reads it.
 */
public final class Faults {

  /** More are not listed: a request with so many needs another look as a whole. */
  public static final int MOST = 100;

  private final UnaryOperator<String> rebase;
  private final List<Remark> faults = new ArrayList<>(0);

  public Faults() {
    this(UnaryOperator.identity());
  }

  Faults(UnaryOperator<String> rebase) {
    this.rebase = rebase;
  }

  /** Adds a fault; the remark returned takes what it is about. */
  public Remark add(FaultCode code) {
    return add(code, "");
  }

  /** Adds a fault of something within, whose places are told from there. */
  Remark add(FaultCode code, String within) {
    Remark remark = new Remark(code, pointer -> rebase.apply(within + pointer), null);
    if (faults.size() < MOST) {
      faults.add(remark);
    }
    return remark;
  }

  /** Those of something that stands in the request at a JSON Pointer. */
  public static Faults below(String place) {
    return new Faults(pointer -> place + pointer);
  }

  /** Adds those of something within. */
  public void addAll(Faults others) {
    faults.addAll(others.faults);
  }

  /** None yet, of what stands at the same place. */
  Faults otherwise() {
    return new Faults(rebase);
  }

  /** Adds those of the first that all others have as well, save at some places. */
  void addCommon(List<Faults> others, List<String> except) {
    List<String> places = except.stream().map(rebase).toList();
    others.get(0).faults.stream()
        .filter(fault -> !places.contains(fault.where()))
        .filter(fault -> others.stream().allMatch(other -> other.hasSame(fault)))
        .forEach(faults::add);
  }

  /** Whether one of them has the same code at the same place. */
  private boolean hasSame(Remark other) {
    return faults.stream()
        .anyMatch(one -> one.code().equals(other.code()) && one.where().equals(other.where()));
  }

  /** Whether no more are listed. */
  public boolean full() {
    return faults.size() >= MOST;
  }

  public boolean none() {
    return faults.isEmpty();
  }

  /** Where they are, as JSON Pointers. */
  List<String> places() {
    return none() ? List.of() : faults.stream().map(Remark::where).toList();
  }

  /** Where something is given that could not be read; unknown fields hinder the reading of no other. */
  List<String> unread() {
    if (none()) {
      return List.of(); // As nearly always, and asked for every row of a batch.
    }
    return faults.stream()
        .filter(fault -> !fault.code().equals(CoreFault.UNKNOWN_FIELD.code()))
        .map(Remark::where)
        .toList();
  }

  /** Their codes. */
  Stream<String> codes() {
    return faults.stream().map(Remark::code);
  }

  /** As they read in English. */
  public List<Fault> list() {
    return list(Reader.ANYONE);
  }

  public List<Fault> list(Reader reader) {
    return faults.stream().map(remark -> remark.fault(reader)).distinct().limit(MOST).toList();
  }
}
