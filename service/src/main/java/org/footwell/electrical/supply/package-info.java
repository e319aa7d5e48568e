/** What feeds the sound system: its cable and fuses, its alternator and battery. */
package org.footwell.electrical.supply;
