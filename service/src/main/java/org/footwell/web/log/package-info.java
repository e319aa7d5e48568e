/** Log lines on standard output: no configuration language, two forms, and nothing of a caller breaks a line. */
package org.footwell.web.log;
