/** The outline of a floor while it is drawn, without widgets. */
package org.cairnfield.ui.plan.internal.outline;
