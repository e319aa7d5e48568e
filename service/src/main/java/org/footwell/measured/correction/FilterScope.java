package org.footwell.measured.correction;

/**
 * Within what filters are looked for.
 *
 * @param count most of them for a channel
 * @param boostDb most that they may lift
 * @param cutDb most that one may lower, as a positive number
 * @param fromHz lowest centre
 * @param toHz highest centre
 */
record FilterScope(
    int count,
    double boostDb,
    double cutDb,
    double lowestQ,
    double highestQ,
    double fromHz,
    double toHz) {}
