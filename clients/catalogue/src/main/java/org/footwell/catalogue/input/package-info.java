/** Reads catalogues row by row and makes requests of them. */
package org.footwell.catalogue.input;
