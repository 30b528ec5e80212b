/** What the window says above all perspectives until it is no longer so. */
package org.cairnfield.ui.notice;
