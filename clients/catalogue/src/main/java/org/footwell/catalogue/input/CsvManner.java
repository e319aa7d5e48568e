package org.footwell.catalogue.input;

import java.nio.charset.Charset;

/**
 * How a CSV is written.
 *
 * @param charset where no byte order mark says another one
 */
public record CsvManner(Separator separator, Charset charset, Decimal decimal) {}
