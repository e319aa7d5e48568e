package org.footwell.parts;

import org.footwell.calculation.FaultCode;

/** Why a sum cannot be told. */
public enum MoneyFault implements FaultCode {
  CURRENCY_UNKNOWN
}
