/** What least has to be changed in a plan so that nothing of it warns any more. */
package org.footwell.vehicle.repair;
