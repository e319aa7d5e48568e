package org.footwell.measured.arrival;

import static org.footwell.calculation.Source.DEFINITION;
import static org.footwell.measured.arrival.ArrivalFinding.TIME_REFERENCE_MISSING;

import java.util.ArrayList;
import java.util.List;
import org.footwell.calculation.Calculation;
import org.footwell.calculation.Card;
import org.footwell.calculation.Formula;
import org.footwell.calculation.Run;
import org.footwell.calculation.Source;
import org.footwell.calculation.text.Given;
import org.footwell.measured.arrival.ArrivalTimesRequest.RecordedChannel;
import org.footwell.measured.arrival.ArrivalTimesRequest.Take;
import org.footwell.measured.arrival.ArrivalTimesRequest.TimeReference;
import org.footwell.measured.arrival.ListeningPosition.Heard;
import org.footwell.measured.response.MeasurementFault;
import org.footwell.measured.response.PairFault;
import org.footwell.parts.FilterFault;
import org.footwell.parts.Safety;
import org.footwell.physics.Air;
import org.footwell.physics.CabinGain;
import org.footwell.recording.Wav;
import org.footwell.signal.AnalyticSignal;
import org.footwell.signal.ExponentialSweep;
import org.footwell.signal.MinimumPhase;
import org.footwell.signal.SweepDeconvolution;

/** When the sound of each channel arrives, from recordings, and what to delay. */
public final class ArrivalTimes implements Calculation<ArrivalTimesRequest, ArrivalTimesResult> {

  private static final Formula.Of2 PATH_M =
      Formula.of("distance_m", "t·c/1000", "m", DEFINITION).with("t", "c", (t, c) -> t * c / 1000);
  private static final Formula.Of2 PATH_MM =
      Formula.of("delay_mm", "t·c", "mm", DEFINITION).with("t", "c", (t, c) -> t * c);

  private static final Card<ArrivalTimesRequest, ArrivalTimesResult> CARD =
      Card.of("arrival-times", ArrivalTimesRequest.class, ArrivalTimesResult.class)
          .title("Arrival times from recordings")
          .purpose(
              "When does the sound of each channel arrive at the listening position, with which"
                  + " polarity and how far above the noise, from impulse responses or recorded"
                  + " sweeps; and how long must each channel wait so that all arrive together.")
          .example(ArrivalExample.json())
          .sources(
              ExponentialSweep.FARINA,
              SweepDeconvolution.DIVISION,
              SweepFocus.DISPERSION,
              MinimumPhase.CEPSTRUM,
              AnalyticSignal.ENVELOPE,
              Wav.RIFF,
              Air.ISO_9613_1,
              CabinGain.HALF_WAVE,
              Likeness.OWN_RULE,
              Source.COMMON_PRACTICE)
          .limits(
              "Loudspeaker and crossover are taken to be of minimum phase: delays that are not,"
                  + " such as those of linear-phase filters, count as flight.",
              "Times are compared between recordings only as far as their time reference goes: a"
                  + " common start to the sample, or a loopback.",
              "A subwoofer has no sharp onset; its arrival is that of its phase slope and good to a"
                  + " millisecond or two in a cabin.",
              "A sweep of another length, up to 10 ms, is told by channels that play above 1.5 kHz,"
                  + " from 0.2 to 1 ms on with tweeters and 1 to 4 ms with doors, and never by"
                  + " woofers; clocks that differ count like it: 100 ppm over 2 s are 0.2 ms.",
              "A reflection that comes before the inverse of the bandwidth has passed cannot be told"
                  + " from the direct sound; the method page says where the method fails.",
              "At most 64 recordings of 64 to 2,097,152 samples, 12,000,000 in all.")
          .findings(ArrivalFinding.values())
          .refusals(MeasurementFault.and(PairFault.and(FilterFault.and(ArrivalFault.values()))))
          .cautions(Safety.HEARING)
          .build();

  @Override
  public Card<ArrivalTimesRequest, ArrivalTimesResult> card() {
    return CARD;
  }

  @Override
  public ArrivalTimesResult compute(ArrivalTimesRequest q, Run run) {
    double speed = run.apply(Air.SPEED_OF_SOUND, q.temperatureC());
    Responses responses = new Responses(q, run);
    SweepPlausibility sweep = new SweepPlausibility(q, hear(q, responses, run), responses, run);
    List<Heard> heard = sweep.heard();
    ArrivalRemarks remarks = new ArrivalRemarks(run);
    for (int i = 0; i < heard.size(); i++) {
      remarks.onTake(i, heard.get(i));
    }
    List<ListeningPosition> positions =
        q.channels().stream()
            .map(channel -> ListeningPosition.of(channel.id(), q.microphones(), heard, run))
            .toList();
    for (int c = 0; c < positions.size(); c++) {
      String id = q.channels().get(c).id();
      remarks.onChannel(c, id, positions.get(c), highestHz(id, heard));
    }
    boolean paired =
        sweep.asStated() && !q.pairs().isEmpty() && q.timeReference() != TimeReference.NONE;
    List<ArrivalTimesResult.Pair> pairs =
        paired ? LeftAgainstRight.of(q, responses, heard, speed, run) : null;
    List<DelaySetting> delays = delays(q, positions, remarks, run);
    List<ArrivalTimesResult.ChannelArrival> channels = new ArrayList<>();
    for (int c = 0; c < positions.size(); c++) {
      channels.add(
          channel(
              q.channels().get(c),
              positions.get(c),
              delays.isEmpty() ? null : delays.get(c),
              speed,
              run));
    }
    return ArrivalTimesResultBuilder.builder()
        .channels(channels)
        .recordings(heard.stream().map(one -> take(one, speed)).toList())
        .pairs(pairs)
        .spreadMs(delays.isEmpty() ? null : (Double) spread(positions, null))
        .remainingSpreadMs(
            delays.isEmpty() || q.processor() == null ? null : (Double) spread(positions, delays))
        .sweepLongerMs(sweep.longerMs())
        .sweepLongerUncertaintyMs(sweep.uncertaintyMs())
        .speedOfSoundMPerS(speed)
        .rateHz(responses.rateHz())
        .build();
  }

  private static List<Heard> hear(ArrivalTimesRequest q, Responses responses, Run run) {
    List<Heard> heard = new ArrayList<>();
    for (int i = 0; i < q.recordings().size(); i++) {
      run.checkDeadline();
      Take take = q.recordings().get(i);
      RecordedChannel channel =
          q.channels().stream()
              .filter(one -> one.id().equals(take.channel()))
              .findFirst()
              .orElseThrow();
      String at = "/recordings/" + i;
      Arrival arrival =
          require(responses.arrival(take.recording(), channel), take, at + "/recording", run);
      double start = responses.startS();
      double more = 0;
      if (q.timeReference() == TimeReference.LOOPBACK) {
        Arrival reference =
            require(responses.loopback(take.loopback()), take, at + "/loopback", run);
        if (reference != null) {
          start = reference.timeS();
          more = reference.uncertaintyS();
        }
      }
      if (arrival != null) {
        heard.add(
            new Heard(
                take.channel(),
                take.microphone(),
                take.recording(),
                arrival,
                1000 * (arrival.timeS() - start),
                1000 * arrival.uncertaintyAgainst(more),
                1000 * (arrival.envelopeS() - start)));
      }
    }
    run.requireNoFaults();
    return heard;
  }

  private static Arrival require(Arrival arrival, Take take, String at, Run run) {
    if (arrival == null) {
      run.refuse(ArrivalFault.NO_ARRIVAL_FOUND)
          .at(at)
          .given(Given.at(take.channel(), take.microphone()));
    }
    return arrival;
  }

  private static double highestHz(String channel, List<Heard> heard) {
    return heard.stream()
        .filter(one -> one.channel().equals(channel))
        .mapToDouble(one -> one.arrival().band().highHz())
        .max()
        .orElseThrow();
  }

  /** One delay for each channel, or none without a time reference. */
  private static List<DelaySetting> delays(
      ArrivalTimesRequest q, List<ListeningPosition> positions, ArrivalRemarks remarks, Run run) {
    List<DelaySetting> delays = new ArrayList<>();
    if (q.timeReference() == TimeReference.NONE) {
      run.find(TIME_REFERENCE_MISSING).at("/time_reference");
      return delays;
    }
    double last = positions.stream().mapToDouble(ListeningPosition::arrivalMs).max().orElseThrow();
    for (int c = 0; c < positions.size(); c++) {
      RecordedChannel channel = q.channels().get(c);
      DelaySetting delay =
          DelaySetting.of(
              last,
              positions.get(c).arrivalMs(),
              q.processor() == null ? null : q.processor().rateHz(),
              q.processor() == null ? null : q.processor().stepMs(),
              run);
      delays.add(delay);
      Double maximum = q.processor() == null ? null : q.processor().maximumDelayMs();
      remarks.onDelay(c, channel.id(), channel.chainDelayMs(), delay, maximum);
    }
    return delays;
  }

  private static double spread(List<ListeningPosition> positions, List<DelaySetting> delays) {
    double earliest = Double.POSITIVE_INFINITY;
    double latest = Double.NEGATIVE_INFINITY;
    for (int c = 0; c < positions.size(); c++) {
      double added = delays == null ? 0 : delays.get(c).addedMs();
      earliest = Math.min(earliest, positions.get(c).arrivalMs() + added);
      latest = Math.max(latest, positions.get(c).arrivalMs() + added);
    }
    return latest - earliest;
  }

  private static ArrivalTimesResult.ChannelArrival channel(
      RecordedChannel channel,
      ListeningPosition position,
      DelaySetting delay,
      double speed,
      Run run) {
    return ArrivalTimesResultChannelArrivalBuilder.builder()
        .id(channel.id())
        .arrivalMs(position.arrivalMs())
        .distanceM(run.apply(PATH_M, position.arrivalMs(), speed))
        .uncertaintyMs(position.uncertaintyMs())
        .spreadMs(position.spreadMs())
        .polarity(position.polarity())
        .polarityConfidence(position.confidence())
        .delayMs(delay == null ? null : (Double) delay.exactMs())
        .delayMm(delay == null ? null : (Double) run.apply(PATH_MM, delay.exactMs(), speed))
        .delaySamples(delay == null ? null : delay.samples())
        .settingMs(delay == null ? null : delay.settingMs())
        .roundingErrorMs(delay == null ? null : delay.roundingErrorMs())
        .absoluteSettingMs(
            delay == null ? null : (Double) (channel.chainDelayMs() + delay.addedMs()))
        .build();
  }

  private static ArrivalTimesResult.Take take(Heard heard, double speed) {
    Arrival arrival = heard.arrival();
    return ArrivalTimesResultTakeBuilder.builder()
        .channel(heard.channel())
        .microphone(heard.microphone())
        .arrivalMs(heard.arrivalMs())
        .uncertaintyMs(heard.uncertaintyMs())
        .method(arrival.method())
        .distanceM(PATH_M.at(heard.arrivalMs(), speed))
        .envelopeMs(heard.envelopeMs())
        .bandLowHz(arrival.band().lowHz())
        .bandHighHz(arrival.band().highHz())
        .polarity(arrival.polarity())
        .polarityConfidence(arrival.confidence())
        .signalToNoiseDb(arrival.signalToNoiseDb())
        .reflectionDb(arrival.reflectionDb())
        .reflectionMs(
            arrival.reflectionS() == null ? null : (Double) (1000 * arrival.reflectionS()))
        .build();
  }
}
