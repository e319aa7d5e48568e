package org.footwell.calculation;

/** A usual caution where the work can hurt someone or the vehicle. */
public interface Caution extends Coded {}
