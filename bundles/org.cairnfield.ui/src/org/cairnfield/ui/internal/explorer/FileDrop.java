package org.cairnfield.ui.internal.explorer;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

import org.cairnfield.ui.internal.intake.IntakeWizard;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.widgets.Control;

/** Survey files dropped onto a control begin their intake. */
final class FileDrop {

	private FileDrop() {
	}

	static void onto(Control control) {
		DropTarget target = new DropTarget(control, DND.DROP_COPY | DND.DROP_MOVE | DND.DROP_DEFAULT);
		target.setTransfer(FileTransfer.getInstance());
		target.addDropListener(new DropTargetAdapter() {
			@Override
			public void dragEnter(DropTargetEvent event) {
				event.detail = DND.DROP_COPY; // the files stay where they are
			}

			@Override
			public void drop(DropTargetEvent event) {
				if (event.data instanceof String[] names) {
					List<Path> files = Arrays.stream(names).map(Path::of).toList();
					// the other program waits until the drop is done
					control.getDisplay().asyncExec(() -> IntakeWizard.open(control.getShell(), files));
				}
			}
		});
	}
}
