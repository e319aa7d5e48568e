/** What a plan does over frequency, as numbers and as plots. */
package org.footwell.vehicle.curves;
