/** What customer and fitter are handed of a plan and its review. */
package org.footwell.vehicle.sheets;
