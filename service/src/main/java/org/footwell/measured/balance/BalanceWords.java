package org.footwell.measured.balance;

import org.footwell.calculation.text.Words;

/** Words in the sentences about balance. */
enum BalanceWords implements Words {
  WIDER_BELOW,
  HOLDING_MID_BAND
}
