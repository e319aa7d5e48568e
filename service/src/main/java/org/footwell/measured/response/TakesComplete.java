package org.footwell.measured.response;

import static org.footwell.measured.response.MeasurementFault.TAKE_MISSING;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.footwell.calculation.Check;
import org.footwell.calculation.Refusing;
import org.footwell.calculation.text.Given;

/** Every channel is recorded at every position. */
@Check.Of(
    value = {
      "channels.*.id",
      "microphones.*.id",
      "recordings.*.channel",
      "recordings.*.microphone"
    },
    says = "There is a recording of every channel at every microphone.")
final class TakesComplete implements Check<RecordedSet> {

  @Override
  public void check(RecordedSet set, Refusing to) {
    Set<List<String>> there =
        set.recordings().stream()
            .map(take -> List.of(take.channel(), take.microphone()))
            .collect(Collectors.toSet());
    for (RecordedSet.Identified channel : set.channels()) {
      for (MicrophonePosition position : set.microphones()) {
        if (!there.contains(List.of(channel.id(), position.id()))) {
          to.refuse(TAKE_MISSING).at("/recordings").given(Given.at(channel.id(), position.id()));
        }
      }
    }
  }
}
