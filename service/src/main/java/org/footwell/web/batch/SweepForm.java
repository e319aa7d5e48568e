package org.footwell.web.batch;

import java.util.List;
import org.footwell.analysis.Point;
import org.footwell.web.request.Problem;

/** A form the table of a sweep can be written in. Made for one table. */
interface SweepForm {

  /** What stands before the rows. */
  byte[] head();

  /** A row with its number from 1. */
  List<Part> row(long number, List<Object> inputs, Point point);

  /** A row that cannot be answered. */
  List<Part> row(long number, List<Object> inputs, Problem problem);

  /** What stands after the rows. */
  byte[] tail();
}
