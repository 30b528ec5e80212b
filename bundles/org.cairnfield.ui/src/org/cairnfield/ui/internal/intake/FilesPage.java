package org.cairnfield.ui.internal.intake;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.cairnfield.ui.show.Chooser;
import org.cairnfield.ui.show.Marked;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;

/** Which files. */
final class FilesPage extends IntakePage {

	private Table list;
	private Button remove;

	FilesPage(IntakeState state) {
		super("files", Messages.FilesPage_surveyFiles, Messages.FilesPage_chooseTheFilesOfA,
				state);
	}

	@Override
	public void createControl(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		page.setLayout(new GridLayout(2, false));
		list = new Table(page, SWT.MULTI | SWT.BORDER | SWT.FULL_SELECTION);
		Marked.named(Marked.id(list, "intake.files"), Messages.FilesPage_surveyFiles);
		list.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 1, 3));
		Button add = new Button(page, SWT.PUSH);
		add.setText(Messages.FilesPage_addFiles);
		add.setData("org.cairnfield.id", "intake.add");
		add.setLayoutData(new GridData(SWT.FILL, SWT.TOP, false, false));
		add.addListener(SWT.Selection, e -> choose());
		remove = new Button(page, SWT.PUSH);
		remove.setText(Messages.FilesPage_remove);
		remove.setData("org.cairnfield.id", "intake.remove");
		remove.setLayoutData(new GridData(SWT.FILL, SWT.TOP, false, false));
		remove.addListener(SWT.Selection, e -> remove());
		new Label(page, SWT.NONE);
		list.addListener(SWT.Selection, e -> remove.setEnabled(list.getSelectionCount() > 0));
		list.addListener(SWT.KeyDown, e -> {
			if (e.keyCode == SWT.DEL) {
				remove();
			}
		});
		DropTarget target = new DropTarget(page, DND.DROP_COPY | DND.DROP_DEFAULT | DND.DROP_MOVE);
		target.setTransfer(FileTransfer.getInstance());
		target.addDropListener(new DropTargetAdapter() {
			@Override
			public void dragEnter(DropTargetEvent event) {
				event.detail = DND.DROP_COPY;
			}

			@Override
			public void drop(DropTargetEvent event) {
				if (event.data instanceof String[] names) {
					add(Arrays.stream(names).map(Path::of).toList());
				}
			}
		});
		setControl(page);
		refresh();
	}

	private void choose() {
		FileDialog dialog = new FileDialog(getShell(), SWT.OPEN | SWT.MULTI);
		dialog.setText(Messages.FilesPage_surveyFiles);
		dialog.setFilterExtensions(new String[] { "*.csv;*.tsv;*.txt;*.gz", "*" });
		dialog.setFilterNames(new String[] { Messages.FilesPage_tablesCsvTsvTxtGz, Messages.FilesPage_allFiles });
		if (Chooser.open(dialog, "surveys") != null) {
			List<Path> chosen = new ArrayList<>();
			for (String name : dialog.getFileNames()) {
				chosen.add(Path.of(dialog.getFilterPath(), name));
			}
			add(chosen);
		}
	}

	private void add(List<Path> files) {
		state.draft(state.draft().plus(files));
		say(null);
		refresh();
	}

	private void remove() {
		List<Path> chosen = Arrays.stream(list.getSelection()).map(item -> (Path) item.getData()).toList();
		state.draft(state.draft().minus(chosen));
		say(null);
		refresh();
	}

	@Override
	void refresh() {
		list.removeAll();
		for (Path file : state.files()) {
			TableItem item = new TableItem(list, SWT.NONE);
			item.setText(NLS.bind(Messages.FilesPage_in, file.getFileName(), file.getParent()));
			item.setData(file);
		}
		remove.setEnabled(false);
		setPageComplete(!state.files().isEmpty());
	}
}
