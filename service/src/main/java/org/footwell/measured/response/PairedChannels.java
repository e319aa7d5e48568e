package org.footwell.measured.response;

import java.util.List;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.RefersTo;

/** What requests share that name channels which should be alike. */
@RefersTo(field = "pairs.*.left", to = "channels.*.id")
@RefersTo(field = "pairs.*.right", to = "channels.*.id")
@Keeps(value = PairsOfTwo.class, of = "pairs")
public interface PairedChannels {

  List<LeftAndRight> pairs();
}
