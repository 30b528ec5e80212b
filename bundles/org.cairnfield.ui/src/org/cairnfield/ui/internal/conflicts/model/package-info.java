/** Open conflicts in words. */
package org.cairnfield.ui.internal.conflicts.model;
