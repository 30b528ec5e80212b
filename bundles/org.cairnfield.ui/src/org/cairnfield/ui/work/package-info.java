/** Long work beside the user interface: jobs with progress that can be cancelled. */
package org.cairnfield.ui.work;
