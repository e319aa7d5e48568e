package org.footwell.factory.clip;

import java.util.List;

/**
 * Where clean ends: the first row of clean steps from below counts, so that neither hiss at low
 * volume nor a lucky step above the clip point decides.
 *
 * @param tones all steps, rising
 * @param first place of the lowest clean step, or −1
 * @param last place of the highest step of that row, or −1
 */
record CleanRange(List<VolumeStepTone> tones, int first, int last, double limitPercent) {

  static CleanRange of(List<VolumeStepTone> tones, double limitPercent) {
    int first = -1;
    int last = -1;
    for (int i = 0; i < tones.size(); i++) {
      if (tones.get(i).distortionPercent() <= limitPercent) {
        first = first < 0 ? i : first;
        last = i;
      } else if (first >= 0) {
        break;
      }
    }
    return new CleanRange(tones, first, last, limitPercent);
  }

  boolean none() {
    return first < 0;
  }

  /** The highest clean step, or null. */
  VolumeStepTone highest() {
    return none() ? null : tones.get(last);
  }

  /** The first step above the clean ones; of all steps if none is clean; null if all are. */
  VolumeStepTone firstUnclean() {
    return last + 1 < tones.size() ? tones.get(last + 1) : null;
  }

  /** A clean step above the first that is not, or null. */
  VolumeStepTone cleanAgain() {
    return none()
        ? null
        : tones.stream()
            .skip(last + 1L)
            .filter(tone -> tone.distortionPercent() <= limitPercent)
            .findFirst()
            .orElse(null);
  }
}
