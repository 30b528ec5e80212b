/** The ways to colour samples that come with the plan. */
package org.cairnfield.ui.plan.internal.colour;
