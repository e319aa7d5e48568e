package org.footwell.web.request;

import org.footwell.calculation.text.Words;

/** Words of an answer as text, besides the names of its figures. */
public enum TextWords implements Words {
  VERDICT,
  FINDINGS,
  SAFETY,
  WORKINGS,
  /** Between a formula and what is put into it. */
  WITH,
  YES,
  NO,
  /** Of a list too long for a line. */
  VALUES,
  /** The one unit that is a word. */
  OCTAVES
}
