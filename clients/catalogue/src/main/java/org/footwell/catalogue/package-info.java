/** Checks a catalogue of drivers with a running service, for people and for build servers. */
package org.footwell.catalogue;
