/** A driver and the air behind it as one circuit, and what that does over frequency. */
package org.footwell.acoustic.enclosure.radiator;
