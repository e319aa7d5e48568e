/**
 * The core: what a calculation is, how one is declared, and the engine that runs it.
 *
 * <p>Knows no topic of the trade, no HTTP and no JSON. A calculation is a pure function from a
 * request record to a result record; everything a caller meets is derived from its {@link
 * org.footwell.calculation.Card}.
 */
package org.footwell.calculation;
