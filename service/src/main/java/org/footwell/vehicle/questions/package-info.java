/** Questions put to a plan as it stands, and the list of those it poses. */
package org.footwell.vehicle.questions;
