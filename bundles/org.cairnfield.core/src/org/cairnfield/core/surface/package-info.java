/** Values known at some places of a floor, spread over it. */
package org.cairnfield.core.surface;
