package org.cairnfield.ui.internal.explorer;

import java.util.Optional;

import org.cairnfield.ui.internal.draft.DraftOffer;
import org.cairnfield.ui.session.ArchiveSession;
import org.cairnfield.ui.session.Sessions;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Link;

/** Says above the tree what a person must know of the archive: that it is read-only, that unsaved work was found. */
final class Banner {

	private final Link link;
	private DraftOffer offer;
	private ArchiveSession session;

	Banner(Composite parent) {
		link = new Link(parent, SWT.WRAP);
		link.setData("org.cairnfield.id", "explorer.banner");
		link.addListener(SWT.Selection, event -> follow(event.text));
		GridDataFactory.fillDefaults().grab(true, false).indent(6, 4).hint(100, SWT.DEFAULT).applyTo(link);
	}

	void show(ArchiveSession now) {
		session = now;
		Optional<DraftOffer> found = now == null ? Optional.empty() : DraftOffer.of(now);
		offer = found.orElse(null);
		show(text());
	}

	private String text() {
		if (session == null) {
			return "No archive is open.";
		}
		if (offer != null) {
			return escaped(offer.text()) + (offer.canBringBack() ? " <a href=\"back\">Bring them back</a> or" : "")
					+ " <a href=\"discard\">" + (offer.canBringBack() ? "discard them" : "Discard them") + "</a>.";
		}
		return session.readOnlyReason().map(reason -> "Read-only: " + escaped(reason) + ".").orElse("")
				+ (session.past().isPresent() ? " <a href=\"present\">Back to the present state</a>" : "");
	}

	private void follow(String what) {
		switch (what) {
		case "present" -> Sessions.workbench().backToPresent();
		case "back" -> {
			offer.bringBack();
			offer = null;
			show(text());
		}
		default -> {
			offer.discard();
			offer = null;
			show(text());
		}
		}
	}

	private void show(String text) {
		link.setText(text);
		((GridData) link.getLayoutData()).exclude = text.isEmpty();
		link.setVisible(!text.isEmpty());
		link.getParent().layout();
	}

	private static String escaped(String text) {
		return text.replace("&", "&&").replace("<", "");
	}
}
