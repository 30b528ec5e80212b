/** What the plan works out about a floor, without widgets: where access points seem to be, how an image lies. */
package org.cairnfield.ui.plan.internal.model;
