package org.footwell.fitting.comparison.sides;

import org.footwell.parts.Driver;

/**
 * A driver in its position.
 *
 * @param f3Hz frequency where its response in place is 3 dB down, Hz, or null
 */
public record ComparedPart(Driver driver, Double f3Hz) {}
