/** A request as it comes and an answer as it goes: addresses, bodies, formats, problems, pace. */
package org.footwell.web.request;
