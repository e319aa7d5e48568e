/** The whole vehicle: composes the topics into one review. */
package org.footwell.vehicle;
