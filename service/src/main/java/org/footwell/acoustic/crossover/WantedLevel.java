package org.footwell.acoustic.crossover;

import org.footwell.physics.ProgrammeSpectrum;

/**
 * How loud a programme is to be.
 *
 * @param sineDbSpl level of a sine whose peaks are as high, dB SPL
 * @param distanceM where, m
 * @param crestFactorDb peak over RMS of the programme, dB
 * @param spectrum how its power is spread
 */
public record WantedLevel(
    double sineDbSpl, double distanceM, double crestFactorDb, ProgrammeSpectrum spectrum) {}
