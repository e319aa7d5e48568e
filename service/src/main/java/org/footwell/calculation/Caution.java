package org.footwell.calculation;

import org.footwell.calculation.text.Coded;

/** A usual caution where the work can hurt someone or the vehicle. */
public interface Caution extends Coded {}
