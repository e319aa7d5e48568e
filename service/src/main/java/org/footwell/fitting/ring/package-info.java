/** What fits an opening: mounting depth, ring and part to be made. */
package org.footwell.fitting.ring;
