package org.footwell.vehicle.reading;

import org.footwell.calculation.Keeps;
import org.footwell.parts.PossibleCable;

/** Whatever works out how a plan plays: of a plan that does not, all is told at once. */
@Keeps(value = PossibleCable.class, of = "channels.*.cable")
@Keeps(EqualiserBelowHalfRate.class)
@Keeps(BoxedDriverKnown.class)
@Keeps(GainOfSignal.class)
public interface PlaysPlan extends ReadsPlan {}
