package org.cairnfield.ui.review.internal.exchange;

import java.util.Optional;

import org.cairnfield.curation.decide.CarrySource;
import org.cairnfield.model.values.Count;
import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.show.IfChanged;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** Offers the verdicts of an earlier split to one that nobody has reviewed yet; takes no room where there are none. */
public final class OfferBar {

	private final ReviewDesk desk;
	private final Composite bar;
	private final Label says;

	/**
	 * @param parent  with a grid layout
	 * @param id      of the bar; its parts are called so with ".text" and ".carry" behind
	 * @param columns of the parent that it takes
	 */
	public OfferBar(Composite parent, ReviewDesk desk, String id, int columns) {
		this.desk = desk;
		bar = Marked.id(new Composite(parent, SWT.NONE), id);
		GridLayoutFactory.fillDefaults().numColumns(2).margins(6, 2).applyTo(bar);
		GridDataFactory.fillDefaults().grab(true, false).span(columns, 1).exclude(true).applyTo(bar);
		bar.setVisible(false);
		says = Marked.id(new Label(bar, SWT.WRAP), id + ".text");
		GridDataFactory.fillDefaults().grab(true, false).hint(100, SWT.DEFAULT).align(SWT.FILL, SWT.CENTER)
				.applyTo(says);
		GridDataFactory.fillDefaults().align(SWT.END, SWT.CENTER)
				.applyTo(Marked.button(bar, Messages.OfferBar_carryOver, id + ".carry",
						() -> CarryOverDialog.open(bar.getShell(), desk)));
	}

	/** As things are now. */
	public void show() {
		Optional<CarrySource> offer = desk.exchange().offer();
		offer.ifPresent(source -> {
			String text = NLS.bind(Messages.OfferBar_splitHasVerdictsOnThis, source.split().getId(),
					Count.of(source.samples(), "sample"));
			if (!text.equals(says.getText())) {
				says.setText(text);
			}
		});
		IfChanged.shown(bar, offer.isPresent());
	}
}
