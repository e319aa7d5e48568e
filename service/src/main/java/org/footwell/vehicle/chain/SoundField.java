package org.footwell.vehicle.chain;

import java.util.List;
import org.footwell.physics.Decibels;
import org.footwell.physics.FrequencyWeighting;
import org.footwell.physics.Phasor;
import org.footwell.physics.PhasorSum;

/**
 * What the channels together make at each seat. Pressures are added with their phases up to the
 * frequency of incoherence, as powers above it, where phases in a cabin cannot be predicted.
 */
public final class SoundField {

  private final List<ChannelChain> chains;
  private final GridProgramme programme;
  private final Grid grid;
  private final double incoherentAboveHz;

  public SoundField(
      List<ChannelChain> chains, List<Drive> drives, Grid grid, double incoherentAboveHz) {
    this.chains = chains;
    this.programme = drives.get(0).programme();
    this.grid = grid;
    this.incoherentAboveHz = incoherentAboveHz;
  }

  /**
   * A level at a seat.
   *
   * @param bandPower mean square pressure in each third octave, Pa²
   */
  @SuppressWarnings("ArrayRecordComponent") // read once, never compared
  public record Level(double[] bandPower, double[] bandHz) {

    /** Unweighted, dB SPL. */
    public double dbSpl() {
      double sum = 0;
      for (double power : bandPower) {
        sum += power;
      }
      return spl(sum);
    }

    /** A-weighted by the mid-bands, dBA. */
    public double dba() {
      double sum = 0;
      for (int b = 0; b < bandPower.length; b++) {
        sum += bandPower[b] * Decibels.toPower(FrequencyWeighting.A.at(bandHz[b]));
      }
      return spl(sum);
    }

    /** One third octave, dB SPL. */
    public double bandDbSpl(int b) {
      return spl(bandPower[b]);
    }

    private static double spl(double power) {
      double reference = Decibels.SPL_REFERENCE_PA;
      return Decibels.ofPower(Math.max(power, 1e-30) / (reference * reference));
    }
  }

  Grid grid() {
    return grid;
  }

  /** All channels together at a seat, each with its state. */
  public Level together(int seat, List<ChannelState> states) {
    return of(seat, states, -1);
  }

  /** One channel alone at a seat. */
  public Level alone(int seat, List<ChannelState> states, int channel) {
    return of(seat, states, channel);
  }

  /**
   * What a channel alone makes at a seat of the programme for a source of 1 V, Pa²: where others are
   * added with their phases, and where as powers.
   */
  public record Split(double adding, double apart) {}

  /** The two parts of one channel alone. */
  public Split split(int seat, int channel) {
    double adding = 0;
    double apart = 0;
    for (int k = 0; k < grid.size(); k++) {
      double square = programme.square(k) * chains.get(channel).filter(k).square();
      if (grid.hz(k) <= incoherentAboveHz) {
        adding += square * chains.get(channel).sound(seat, k).square();
      } else {
        apart += square * chains.get(channel).soundPower(seat, k);
      }
    }
    return new Split(adding, apart);
  }

  private Level of(int seat, List<ChannelState> states, int only) {
    double[] power = new double[grid.bandCount()];
    for (int k = 0; k < grid.size(); k++) {
      power[grid.band(k)] += programme.square(k) * sineSquare(seat, states, only, k);
    }
    return new Level(power, grid.bands());
  }

  /** Level of a full-scale sine at a frequency of the grid, all channels together, dB SPL. */
  public double sineDbSpl(int seat, List<ChannelState> states, int k) {
    return Level.spl(sineSquare(seat, states, -1, k));
  }

  /** The same of one channel alone. */
  public double sineDbSpl(int seat, List<ChannelState> states, int channel, int k) {
    return Level.spl(sineSquare(seat, states, channel, k));
  }

  private double sineSquare(int seat, List<ChannelState> states, int only, int k) {
    boolean coherent = grid.hz(k) <= incoherentAboveHz;
    PhasorSum sum = new PhasorSum();
    double apart = 0;
    for (int c = 0; c < chains.size(); c++) {
      ChannelState state = states.get(c);
      if ((only >= 0 && c != only) || state.sourceV() == 0) {
        continue;
      }
      ChannelChain chain = chains.get(c);
      double volts = state.trimmedV();
      if (coherent) {
        double late = -0.36 * grid.hz(k) * state.delayMs();
        Phasor turned = Phasor.ofPolar(volts * state.polarity(), late).times(chain.filter(k));
        sum.add(chain.sound(seat, k).times(turned));
      } else {
        apart += volts * volts * chain.filter(k).square() * chain.soundPower(seat, k);
      }
    }
    return coherent ? sum.value().square() : apart;
  }

  /**
   * Level of one channel alone in a third octave at a seat with the same signal in all of them, dB SPL
   * for a full-scale sine in that band and a source of 1 V.
   */
  public double transferDb(int seat, int channel, int band) {
    ChannelChain chain = chains.get(channel);
    double power = 0;
    int count = 0;
    for (int k = 0; k < grid.size(); k++) {
      if (grid.band(k) == band) {
        double sound =
            grid.hz(k) <= incoherentAboveHz
                ? chain.sound(seat, k).square()
                : chain.soundPower(seat, k);
        power += sound * chain.filter(k).square();
        count++;
      }
    }
    return Level.spl(power / count);
  }
}
