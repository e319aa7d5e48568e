/** Recordings of every channel at every microphone position: their rules and what they show. */
package org.footwell.measured.response;
