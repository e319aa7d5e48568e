/** What is told of a check: to a person, to a build server, and to the next check. */
package org.footwell.catalogue.report;
