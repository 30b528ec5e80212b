/** What the plan shows. */
package org.cairnfield.ui.plan.internal.scene;
