/**
 * The one model of a driver: its circuit with the air behind it, what its terminals show and what it
 * radiates. It knows no request and no finding; calculations read their requests into it.
 */
package org.footwell.loudspeaker;
