/** Laying a plan image on its floor by control points. */
package org.cairnfield.ui.plan.internal.image;
