package org.footwell.calculation;

/** Faults that any request may have, whatever it asks for. */
public enum CoreFault implements FaultCode {
  REQUIRED,
  UNKNOWN_FIELD,
  WRONG_TYPE,
  NOT_ALLOWED,
  EXACTLY_ONE_OF,
  AT_MOST_ONE_OF,
  NEEDED_BESIDE,
  NOT_ASCENDING,
  DUPLICATE,
  NAME_OF_RESULT,
  DANGLING_REFERENCE,
  NOT_FINITE
}
