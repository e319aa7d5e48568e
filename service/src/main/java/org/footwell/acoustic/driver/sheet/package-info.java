/** The identities among the figures of a driver: completing, checking and reconciling them. */
package org.footwell.acoustic.driver.sheet;
