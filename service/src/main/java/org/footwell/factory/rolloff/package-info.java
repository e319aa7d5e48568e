/** Bass that falls behind as the volume rises: where, by how much, and what restores it. */
package org.footwell.factory.rolloff;
