package org.cairnfield.ui.internal.start;

import java.nio.file.Path;

import org.cairnfield.ui.internal.exchange.RemoteCopy;
import org.cairnfield.ui.internal.open.Opening;
import org.cairnfield.ui.internal.open.RecentArchives;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.part.ViewPart;

/** What to do where no archive is open. */
public final class StartView extends ViewPart {

	private Composite page;

	@Override
	public void createPartControl(Composite parent) {
		page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.swtDefaults().margins(40, 32).spacing(12, 10).applyTo(page);
		Label title = new Label(page, SWT.NONE);
		title.setFont(JFaceResources.getHeaderFont());
		title.setText(Messages.StartView_noArchiveIsOpen);
		choice(Messages.StartView_openTheDemo, Messages.StartView_theInventedMarrowQuayMuseums, Opening::openDemo);
		choice(Messages.StartView_openAnArchive, Messages.StartView_aFolderThatHoldsOne,
				() -> ChooseArchive.open(page.getShell()));
		choice(Messages.StartView_copyFromARemote, Messages.StartView_anArchiveThatOthersWork,
				() -> RemoteCopy.ask(page.getShell()));
		choice(Messages.StartView_newArchive, Messages.StartView_anEmptyFolderToTake,
				() -> ChooseArchive.create(page.getShell()));
		if (!RecentArchives.all().isEmpty()) {
			Label recent = new Label(page, SWT.NONE);
			recent.setFont(JFaceResources.getBannerFont());
			recent.setText(Messages.StartView_openedBefore);
			GridDataFactory.swtDefaults().indent(0, 12).applyTo(recent);
			RecentArchives.all().forEach(this::recent);
		}
	}

	private void choice(String name, String what, Runnable action) {
		Composite row = new Composite(page, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).spacing(14, 0).applyTo(row);
		Button button = new Button(row, SWT.PUSH);
		button.setText(name);
		button.addListener(SWT.Selection, event -> action.run());
		GridDataFactory.swtDefaults().hint(180, SWT.DEFAULT).applyTo(button);
		Label label = new Label(row, SWT.WRAP);
		label.setText(what);
	}

	private void recent(Path folder) {
		Link link = new Link(page, SWT.NONE);
		link.setText("<a>" + folder.getFileName() + "</a>   " + folder.getParent());
		link.addListener(SWT.Selection, event -> Opening.open(folder));
	}

	@Override
	public void setFocus() {
		Marked.focus(page);
	}
}
