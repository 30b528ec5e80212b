/** The view with its choices, and the placing of plan images. */
package org.cairnfield.ui.plan.internal.view;
