/** What several sources together give at each seat, band by band, and what limits them. */
package org.footwell.acoustic.seats;
