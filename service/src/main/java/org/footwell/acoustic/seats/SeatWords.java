package org.footwell.acoustic.seats;

import org.footwell.calculation.text.Words;

/** Words in sentences about the level at seats. */
enum SeatWords implements Words {
  ALL_AT_FULL_DRIVE,
  LIMIT_OF,
  AWAY_FROM
}
