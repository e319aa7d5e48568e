package org.footwell.calculation;

import java.util.List;

/**
 * A kind of document that requests of calculations are read from, so that a question can be put to it
 * as it stands.
 */
public interface Document<D extends Record> {

  Class<D> type();

  /** What a document has to be refused for before anything is asked. */
  List<FaultCode> refusals();

  /**
   * How the places are written that a calculation can be about, such as {@code /drivers/{id}}; none
   * where it cannot be put to such a document.
   */
  List<String> places(Calculation<?, ?> calculation);

  /**
   * Reads the request of a calculation that has places.
   *
   * @param about the place it is about, or empty for the document as a whole
   * @param run of the document, whose rules hold
   * @throws Refused if there is no such place
   */
  <Q extends Record> Asked<Q> ask(Calculation<Q, ?> calculation, D document, String about, Run run);
}
