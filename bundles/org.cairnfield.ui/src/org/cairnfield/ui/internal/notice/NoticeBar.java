package org.cairnfield.ui.internal.notice;

import org.cairnfield.ui.charts.colour.Palette.Tint;
import org.cairnfield.ui.charts.colour.Palette;
import org.cairnfield.ui.notice.Notice;
import org.cairnfield.ui.notice.Notices;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;

/** A strip below the toolbar of the window, a line a notice, in every perspective; not there where nothing is to be said. */
public final class NoticeBar {

	/** Lays out the composite that the platform keeps the toolbar in, line by line. */
	private static final String TRIM_LAYOUT = "TrimBarLayout";
	private static final int MARGIN = 12;

	private final Shell window;
	private final Runnable listener = this::show;
	private Strip strip;

	private NoticeBar(Shell window) {
		this.window = window;
		Notices.workbench().add(listener);
		window.addListener(SWT.Dispose, event -> Notices.workbench().remove(listener));
	}

	/** Gives a window its strip. */
	public static void addTo(Shell window) {
		new NoticeBar(window);
	}

	/** Where the toolbar is; above all else. */
	private Composite top() {
		Composite top = null;
		for (Control child : window.getChildren()) {
			if (child instanceof Composite composite && composite.getLayout() != null
					&& composite.getLayout().getClass().getSimpleName().equals(TRIM_LAYOUT)
					&& (top == null || composite.getBounds().y < top.getBounds().y)) {
				top = composite;
			}
		}
		if (top == null) {
			throw new IllegalStateException("the window has no place for notices");
		}
		return top;
	}

	private void show() {
		if (strip == null) {
			if (Notices.workbench().list().isEmpty()) {
				return; // the window may not be laid out yet
			}
			window.layout();
			strip = new Strip(top());
		}
		for (Control child : strip.getChildren()) {
			child.dispose();
		}
		Notices.workbench().list().forEach(this::line);
		strip.setVisible(strip.getChildren().length > 0);
		window.layout(new Control[] { strip });
		strip.layout(true, true);
	}

	private void line(Notice notice) {
		Composite line = new Composite(strip, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
		GridLayoutFactory.swtDefaults().numColumns(2).margins(6, 3).applyTo(line);
		Label icon = new Label(line, SWT.NONE);
		Marked.named(icon, switch (notice.kind()) {
		case INFORMATION -> Messages.NoticeBar_information;
		case WARNING -> Messages.NoticeBar_warning;
		case ERROR -> Messages.NoticeBar_error;
		}).setImage(JFaceResources.getImage(switch (notice.kind()) {
		case INFORMATION -> Dialog.DLG_IMG_MESSAGE_INFO;
		case WARNING -> Dialog.DLG_IMG_MESSAGE_WARNING;
		case ERROR -> Dialog.DLG_IMG_MESSAGE_ERROR;
		}));
		Link link = new Link(line, SWT.WRAP);
		link.setData("org.cairnfield.id", "notice." + notice.id());
		link.setText(text(notice));
		link.addListener(SWT.Selection, event -> notice.actions().get(Integer.parseInt(event.text)).run().run());
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(link);
		Palette palette = Palette.of(strip.getDisplay()).tinted(Tint.valueOf(notice.kind().name()));
		for (Control control : new Control[] { line, icon, link }) {
			control.setData("org.eclipse.e4.ui.css.disabled", true);
			control.setBackground(new Color(palette.background()));
			control.setForeground(new Color(palette.foreground()));
		}
		link.setLinkForeground(
				new Color(palette.readable(strip.getDisplay().getSystemColor(SWT.COLOR_LINK_FOREGROUND).getRGB())));
	}

	private static String text(Notice notice) {
		StringBuilder text = new StringBuilder(notice.text().replace("&", "&&").replace("<", ""));
		for (int i = 0; i < notice.actions().size(); i++) {
			text.append("   <a href=\"").append(i).append("\">").append(notice.actions().get(i).label()).append("</a>");
		}
		return text.toString();
	}

	/** As wide as the window, so that it takes a line of its own. */
	private static final class Strip extends Composite {
		Strip(Composite parent) {
			super(parent, SWT.NONE);
			GridLayoutFactory.fillDefaults().spacing(0, 1).applyTo(this);
		}

		@Override
		public Point computeSize(int width, int height, boolean changed) {
			if (getChildren().length == 0) {
				return new Point(0, 0);
			}
			int wide = Math.max(200, getShell().getClientArea().width - MARGIN);
			return new Point(wide, super.computeSize(wide, SWT.DEFAULT, changed).y);
		}
	}
}
