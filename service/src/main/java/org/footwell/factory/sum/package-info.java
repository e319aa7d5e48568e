/** Outputs of a factory source added up to a full-range signal. */
package org.footwell.factory.sum;
