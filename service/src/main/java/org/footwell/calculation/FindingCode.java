package org.footwell.calculation;

import org.footwell.calculation.text.Coded;

/** What a calculation may have to say about an answer it could give. */
public interface FindingCode extends Coded {

  /** How bad it is: {@code NOTE}, {@code WARNING} or {@code STOP}. */
  Verdict level();
}
