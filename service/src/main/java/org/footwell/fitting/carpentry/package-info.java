/** What a box is built of: panels cut from board. */
package org.footwell.fitting.carpentry;
