package org.footwell.measured.response;

import java.util.List;
import org.footwell.calculation.Keeps;
import org.footwell.calculation.rule.RefersTo;
import org.footwell.calculation.rule.Unique;

/** What requests share that hold a recording for every channel and microphone position. */
@Unique("channels.*.id")
@Unique("microphones.*.id")
@Unique({"recordings.*.channel", "recordings.*.microphone"})
@RefersTo(field = "recordings.*.channel", to = "channels.*.id")
@RefersTo(field = "recordings.*.microphone", to = "microphones.*.id")
@Keeps(TakesComplete.class)
@Keeps(SweepOfKind.class)
public interface RecordedSet {

  RecordedKind kind();

  /** What was played; null for impulse responses. */
  PlayedSweep sweep();

  List<? extends Identified> channels();

  List<MicrophonePosition> microphones();

  List<? extends Taken> recordings();

  /** A channel, by its name. */
  interface Identified {
    String id();
  }
}
