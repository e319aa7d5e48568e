package org.footwell.calculation;

import java.io.IOException;
import java.math.BigDecimal;

/** A text in some notation, piece by piece. */
public interface Tokens {

  /** What a piece is. */
  enum Kind {
    /** A record begins. */
    GROUP,
    GROUP_END,
    LIST,
    LIST_END,
    /** The name of a field, whose value follows. */
    NAME,
    /** A number without point and exponent. */
    WHOLE,
    FRACTION,
    TEXT,
    TRUE,
    FALSE,
    NOTHING,
    /** Nothing follows. */
    END
  }

  /**
   * Goes on to the next piece.
   *
   * @throws IOException if the text is not well-formed
   */
  Kind next() throws IOException;

  /** A name or a text. */
  String text() throws IOException;

  /** A number, as a double. */
  double number() throws IOException;

  /**
   * A whole number.
   *
   * @throws IOException if it is none that an int can be
   */
  int whole() throws IOException;

  /** A number, exactly. */
  BigDecimal exact() throws IOException;
}
