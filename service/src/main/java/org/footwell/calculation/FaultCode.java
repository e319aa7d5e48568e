package org.footwell.calculation;

import org.footwell.calculation.text.Coded;

/** Why an answer could not be given: readable input that is impossible or incomplete. */
public interface FaultCode extends Coded {}
