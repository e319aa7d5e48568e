/** Writes the OpenAPI contract from the cards and records, at build time. Not part of the jar. */
package org.footwell.contract;
