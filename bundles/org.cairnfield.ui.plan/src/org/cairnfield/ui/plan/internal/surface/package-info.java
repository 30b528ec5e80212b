/** Surfaces below the samples of the plan: how densely it was surveyed, how strongly an access point is heard in between. */
package org.cairnfield.ui.plan.internal.surface;
