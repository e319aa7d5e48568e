/** Many requests in one: rows of CSV, lines and arrays of JSON, answered in order as they come. */
package org.footwell.web.batch;
