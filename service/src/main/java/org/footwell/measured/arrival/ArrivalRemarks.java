package org.footwell.measured.arrival;

import static org.footwell.measured.arrival.ArrivalFinding.ARRIVAL_BY_ENVELOPE;
import static org.footwell.measured.arrival.ArrivalFinding.DELAY_BEYOND_MAXIMUM;
import static org.footwell.measured.arrival.ArrivalFinding.MICROPHONES_DISAGREE;
import static org.footwell.measured.arrival.ArrivalFinding.NO_SHARP_ONSET;
import static org.footwell.measured.arrival.ArrivalFinding.POLARITIES_DISAGREE;
import static org.footwell.measured.arrival.ArrivalFinding.POLARITY_INVERTED;
import static org.footwell.measured.arrival.ArrivalFinding.POLARITY_UNSURE;
import static org.footwell.measured.arrival.ArrivalFinding.REFLECTION_STRONGER;
import static org.footwell.measured.arrival.ArrivalFinding.SETTING_BEYOND_MAXIMUM;
import static org.footwell.measured.arrival.ArrivalFinding.SIGNAL_TO_NOISE_LOW;

import org.footwell.calculation.Run;
import org.footwell.measured.arrival.ArrivalTimesResult.Method;
import org.footwell.measured.arrival.ListeningPosition.Heard;

/** What is remarked on. Thresholds are common practice unless the method page says otherwise. */
final class ArrivalRemarks {

  /** Below this the arrival of a full-range channel begins to fail: measured, see the method page. */
  private static final double LOW_DB = 30;

  /** Below this upper end of a band there is no sharp onset, Hz. */
  private static final double SHARP_FROM_HZ = 300;

  private static final double SURE = 0.5;

  /** Spread over microphone positions that is remarked on, ms: a third of a metre. */
  private static final double WIDE_SPREAD_MS = 1;

  private final Run run;

  ArrivalRemarks(Run run) {
    this.run = run;
  }

  void onTake(int index, Heard heard) {
    String at = "/recordings/" + index;
    Arrival arrival = heard.arrival();
    String channel = heard.channel();
    String microphone = heard.microphone();
    if (arrival.signalToNoiseDb() < LOW_DB) {
      run.find(SIGNAL_TO_NOISE_LOW)
          .at(at)
          .value(arrival.signalToNoiseDb())
          .limit(LOW_DB)
          .own("name", channel)
          .own("microphone", microphone);
    }
    if (arrival.method() == Method.ENVELOPE) {
      run.find(ARRIVAL_BY_ENVELOPE)
          .at(at)
          .value(heard.uncertaintyMs())
          .own("name", channel)
          .own("microphone", microphone);
    }
    if (arrival.reflectionDb() != null && arrival.reflectionDb() > 0) {
      run.find(REFLECTION_STRONGER)
          .at(at)
          .value(arrival.reflectionDb())
          .limit(0)
          .own("name", channel)
          .own("microphone", microphone)
          .with("delay", 1000 * arrival.reflectionS());
    }
  }

  void onChannel(int index, String id, ListeningPosition position, double highestHz) {
    String at = "/channels/" + index;
    if (!position.agree()) {
      run.find(POLARITIES_DISAGREE).at(at).value(position.confidence()).own("name", id);
    } else if (position.confidence() < SURE) {
      run.find(POLARITY_UNSURE).at(at).value(position.confidence()).limit(SURE).own("name", id);
    } else if (position.polarity() < 0) {
      run.find(POLARITY_INVERTED).at(at).value(position.confidence()).own("name", id);
    }
    if (position.spreadMs() > WIDE_SPREAD_MS) {
      run.find(MICROPHONES_DISAGREE)
          .at(at)
          .value(position.spreadMs())
          .limit(WIDE_SPREAD_MS)
          .own("name", id);
    }
    if (highestHz < SHARP_FROM_HZ) {
      run.find(NO_SHARP_ONSET)
          .at(at)
          .value(highestHz)
          .limit(SHARP_FROM_HZ)
          .own("name", id)
          .with("uncertainty", position.uncertaintyMs());
    }
  }

  void onDelay(int index, String id, double chainMs, DelaySetting delay, Double maximum) {
    if (maximum == null || chainMs + delay.addedMs() <= maximum) {
      return;
    }
    boolean addedTooMuch = delay.addedMs() > maximum;
    run.find(addedTooMuch ? DELAY_BEYOND_MAXIMUM : SETTING_BEYOND_MAXIMUM)
        .at("/channels/" + index)
        .value(addedTooMuch ? delay.addedMs() : chainMs + delay.addedMs())
        .limit(maximum)
        .own("name", id);
  }
}
