package org.footwell.parts.plan;

import java.util.List;

/**
 * A calculation that can be put to a plan: which of its places the question can be about, and how its
 * request is read from one. What the plan lacks is left out: the rules of the request tell what it
 * cannot do without.
 *
 * @param <Q> the request of the calculation
 */
public interface AskOfPlan<Q extends Record> {

  /** The kinds of places it can be about. */
  List<PlanPlace> places();

  /** Its request about the place of a reader. */
  Q ask(PlanReader plan);
}
