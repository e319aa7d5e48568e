/** What is wrong in a finished vehicle: faults put into its model and held against what was measured. */
package org.footwell.vehicle.faults;
