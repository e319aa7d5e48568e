package org.footwell.measured.balance;

import java.util.ArrayList;
import java.util.List;
import org.footwell.measured.response.Gate;
import org.footwell.measured.response.JudgedChannel;
import org.footwell.measured.response.PositionPowers;
import org.footwell.physics.ThirdOctaves;
import org.footwell.signal.PlayingBand;

/** Third octaves of one channel. */
final class BandLevels {

  private final JudgedChannel asked;
  private final double[] frequencies;
  private final PositionPowers heard;
  private final double[] targetDb;
  private final PlayingBand plays;
  private final PlayingBand band;

  BandLevels(
      JudgedChannel asked,
      double[] frequencies,
      PositionPowers heard,
      double[] targetDb,
      PlayingBand plays) {
    this.asked = asked;
    this.frequencies = frequencies;
    this.heard = heard;
    this.targetDb = targetDb;
    this.plays = plays;
    this.band = heard.told(plays);
  }

  /** The third octaves of a stated band; null if none is stated or none lies in it. */
  static PlayingBand within(JudgedChannel channel, double[] frequencies) {
    if (channel.fromHz() == null || channel.toHz() == null) {
      return null;
    }
    double from = ThirdOctaves.exactHz(channel.fromHz()) * (1 - 1e-9);
    double to = ThirdOctaves.exactHz(channel.toHz()) * (1 + 1e-9);
    int first = -1;
    int last = -1;
    for (int i = 0; i < frequencies.length; i++) {
      if (frequencies[i] >= from && frequencies[i] <= to) {
        first = first < 0 ? i : first;
        last = i;
      }
    }
    return first < 0 ? null : new PlayingBand(first, last);
  }

  String id() {
    return asked.id();
  }

  double fromHz() {
    return frequencies[band.first()];
  }

  double toHz() {
    return frequencies[band.last()];
  }

  double levelDb(int i) {
    return heard.mean().levelsDb()[i];
  }

  /** Lowest frequency the gates can tell, Hz. */
  double gateLimitHz() {
    return Gate.LIMIT.at(heard.lengthS());
  }

  /** Mean level in the bands it is judged by, dB. */
  double meanDb() {
    double sum = 0;
    for (int i = band.first(); i <= band.last(); i++) {
      sum += levelDb(i);
    }
    return sum / count();
  }

  /** Mean by which those bands stand above the wanted curve as given, dB. */
  double overTargetDb() {
    double sum = 0;
    for (int i = band.first(); i <= band.last(); i++) {
      sum += levelDb(i) - targetDb[i];
    }
    return sum / count();
  }

  /** Powers of those bands added. */
  double power() {
    double sum = 0;
    for (int i = band.first(); i <= band.last(); i++) {
      sum += heard.mean().powers()[i];
    }
    return sum;
  }

  private int count() {
    return band.last() - band.first() + 1;
  }

  /**
   * The channel in the answer.
   *
   * @param offset what sets the wanted curve to the quietest channel, dB
   */
  LevelAndBalanceResult.ChannelLevel channel(double trim, double offset) {
    double squares = 0;
    for (int i = band.first(); i <= band.last(); i++) {
      double off = levelDb(i) + trim - targetDb[i] - offset;
      squares += off * off;
    }
    return new LevelAndBalanceResult.ChannelLevel(
        id(), fromHz(), toHz(), meanDb(), overTargetDb(), trim, Math.sqrt(squares / count()));
  }

  List<LevelAndBalanceResult.Band> bands(double trim, double offset) {
    List<LevelAndBalanceResult.Band> bands = new ArrayList<>();
    for (int i = 0; i < frequencies.length; i++) {
      bands.add(
          new LevelAndBalanceResult.Band(
              id(),
              frequencies[i],
              levelDb(i),
              heard.mean().spreadDb()[i],
              heard.aboveNoiseDb(i),
              levelDb(i) + trim,
              targetDb[i] + offset,
              i >= band.first() && i <= band.last()));
    }
    return bands;
  }

  JudgedChannel asked() {
    return asked;
  }

  double[] frequencies() {
    return frequencies;
  }

  /** What the positions heard. */
  PositionPowers heard() {
    return heard;
  }

  /** The wanted curve as given, dB. */
  double[] targetDb() {
    return targetDb;
  }

  /** The third octaves it is judged by: those it plays, as far as the sweep tells them. */
  PlayingBand band() {
    return band;
  }

  /** The third octaves it plays or is stated to, some of them perhaps beyond what the sweep tells. */
  PlayingBand plays() {
    return plays;
  }
}
