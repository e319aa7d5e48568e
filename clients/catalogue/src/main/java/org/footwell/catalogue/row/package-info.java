/** A row of the catalogue, before and after it was checked. */
package org.footwell.catalogue.row;
