package org.footwell.calculation.text;

/** A part of a sentence that depends on who reads it. */
public interface ToldTo {

  /** As a request writes it. */
  String text();

  /** As someone reads it. */
  String said(Reader reader);
}
