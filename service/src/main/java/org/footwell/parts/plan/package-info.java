/**
 * The document of a job: a vehicle, its parts and how they hang together, what was set and what was
 * measured. Records only; every calculation that a plan can pose reads its request from them.
 */
package org.footwell.parts.plan;
