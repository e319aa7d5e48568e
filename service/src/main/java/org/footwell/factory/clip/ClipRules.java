package org.footwell.factory.clip;

import static org.footwell.factory.clip.ClipFault.READING_PEAKS_INCOMPLETE;
import static org.footwell.factory.clip.ClipFault.TONE_ABOVE_HALF_RATE;
import static org.footwell.factory.clip.ClipFault.VOLTAGE_OF_CAPTURES_ONLY;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.footwell.calculation.CoreFault;
import org.footwell.calculation.Run;
import org.footwell.factory.clip.ClipPointRequest.Capture;
import org.footwell.factory.clip.ClipPointRequest.OutputLoad;
import org.footwell.factory.clip.ClipPointRequest.Reading;
import org.footwell.recording.RecordingRules;

/** The rules between the fields of a request; every breach is refused, all at once. */
final class ClipRules {

  private ClipRules() {}

  /** Ends the run if anything is amiss. */
  static void require(ClipPointRequest q, Run run) {
    Map<String, Object> ways = new LinkedHashMap<>();
    ways.put("captures", q.captures());
    ways.put("readings", q.readings());
    run.exactlyOneOf("", ways);
    if (q.loadOhm() != null && q.terminals() == OutputLoad.OPEN) {
      notAllowed("/load_ohm", q.loadOhm(), "left out with open terminals", run);
    }
    if (q.captures() != null) {
      captures(q, run);
    }
    if (q.readings() != null) {
      readings(q, run);
    }
    run.requireNoFaults();
  }

  private static void captures(ClipPointRequest q, Run run) {
    unique("/captures/", q.captures().stream().map(Capture::volumeStep).toList(), run);
    RecordingRules rules = new RecordingRules(run);
    for (int i = 0; i < q.captures().size(); i++) {
      String at = "/captures/" + i + "/recording";
      boolean usable = rules.check(q.captures().get(i).recording(), at);
      if (usable && i == 0 && q.toneHz() != null) {
        double half = q.captures().get(i).recording().rateHz() / 2;
        if (q.toneHz() >= half) {
          run.refuse(TONE_ABOVE_HALF_RATE)
              .at("/tone_hz")
              .given(q.toneHz())
              .allowed("below " + half);
        }
      }
    }
  }

  private static void readings(ClipPointRequest q, Run run) {
    unique("/readings/", q.readings().stream().map(Reading::volumeStep).toList(), run);
    if (q.toneHz() != null) {
      notAllowed("/tone_hz", q.toneHz(), "left out with readings", run);
    }
    if (q.fullScaleV() != null) {
      run.refuse(VOLTAGE_OF_CAPTURES_ONLY).at("/full_scale_v").given(q.fullScaleV());
    }
    for (int i = 0; i < q.readings().size(); i++) {
      Reading reading = q.readings().get(i);
      if ((reading.positivePeakV() == null) != (reading.negativePeakV() == null)) {
        run.refuse(READING_PEAKS_INCOMPLETE).at("/readings/" + i);
      }
    }
  }

  private static void unique(String list, List<Integer> steps, Run run) {
    Set<Integer> seen = new HashSet<>();
    for (int i = 0; i < steps.size(); i++) {
      if (!seen.add(steps.get(i))) {
        run.refuse(CoreFault.DUPLICATE).at(list + i + "/volume_step").given(steps.get(i));
      }
    }
  }

  private static void notAllowed(String at, Object given, String allowed, Run run) {
    run.refuse(CoreFault.NOT_ALLOWED).at(at).given(given).allowed(allowed);
  }
}
