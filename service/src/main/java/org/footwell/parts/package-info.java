/** What the parts of a sound system are: records and enumerations that topics share. */
package org.footwell.parts;
