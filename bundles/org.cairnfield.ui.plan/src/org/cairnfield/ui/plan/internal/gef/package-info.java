/** The plan on GEF: figures, parts, gestures. */
package org.cairnfield.ui.plan.internal.gef;
