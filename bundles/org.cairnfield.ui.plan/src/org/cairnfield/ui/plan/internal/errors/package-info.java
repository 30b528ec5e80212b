/** Errors of ways of matching, as the plan shows them: what was put where. */
package org.cairnfield.ui.plan.internal.errors;
