/** What goes into the vehicle's openings and can be taken out again. */
package org.footwell.fitting;
