package org.cairnfield.ui.review.internal.evidence;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

import org.cairnfield.curation.decide.Standing;
import org.cairnfield.curation.propose.Evidence;
import org.cairnfield.curation.propose.EvidenceTable;
import org.cairnfield.curation.team.CommentSubject;
import org.cairnfield.model.Site;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.ui.charts.colour.Palette;
import org.cairnfield.ui.review.internal.desk.DeskListener;
import org.cairnfield.ui.review.internal.desk.ReviewDesk;
import org.cairnfield.ui.review.internal.desk.TypingGuard;
import org.cairnfield.ui.show.CommentBox;
import org.cairnfield.ui.show.Marked;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Composite;

/** Shows the evidence on the sample in hand: its homes as a table, the rest as text that can be read, searched and copied. */
final class EvidencePane implements DeskListener {

	private final ReviewDesk desk;
	private final HomesTable homes;
	private final StyledText text;
	private final CommentBox comments;
	private Evidence shown;
	private Standing shownStanding;

	EvidencePane(Composite parent, ReviewDesk desk, TypingGuard typing) {
		this.desk = desk;
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(page);
		homes = new HomesTable(page);
		text = Marked.named(
				Marked.id(new StyledText(page, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL), "review.evidence"),
				Messages.EvidencePane_evidenceOnTheSampleIn);
		text.setMargins(8, 6, 8, 6);
		text.setLineSpacing(1);
		text.setWrapIndent(14);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(text);
		comments = new CommentBox(page, 1, "review");
		typing.guard(comments.field());
		desk.add(this);
		text.addListener(SWT.Dispose, event -> desk.remove(this));
		show();
	}

	@Override
	public void splitChanged() {
		show();
	}

	@Override
	public void verdictsChanged() {
		show();
	}

	@Override
	public void currentChanged() {
		show();
	}

	private void show() {
		if (text.isDisposed()) {
			return;
		}
		Evidence evidence = desk.review().evidence().of(desk.review().current());
		Standing standing = evidence == null ? null : desk.review().standings().of(evidence.sample());
		comments.show(desk.session(),
				evidence == null || desk.split() == null ? null
						: new CommentSubject.OfProposal(desk.split().getId(), evidence.sample()),
				standing != null && standing.hidden());
		if (evidence != null && evidence == shown && Objects.equals(standing, shownStanding)) {
			return;
		}
		shown = evidence;
		shownStanding = standing;
		homes.show(evidence);
		if (evidence == null) {
			text.setText(desk.review().evidence().isWaiting() ? Messages.EvidencePane_computingTheEvidence
					: Messages.EvidencePane_takeUpASampleOf);
			return;
		}
		EvidenceTable table = desk.review().evidence().table();
		write(EvidenceText.of(evidence, place(evidence), standing, table.basis(), table.rates().of(evidence.advice()),
				ZoneId.systemDefault()));
	}

	private String place(Evidence evidence) {
		SampleRef ref = desk.ref(evidence.sample());
		if (ref == null) {
			return Messages.EvidencePane_isGoneFromTheArchive;
		}
		SampleTable table = ref.survey().table();
		Site site = ref.survey().getSite();
		return String.format(Locale.ROOT, Messages.EvidencePane_floorXMYM, site == null ? "" : ModelText.name(site),
				table.floorLevel(ref.row()), table.xMetres(ref.row()), table.yMetres(ref.row()));
	}

	private void write(List<EvidenceText.Line> lines) {
		StringBuilder all = new StringBuilder();
		List<StyleRange> styles = new ArrayList<>();
		for (EvidenceText.Line line : lines) {
			if (line.style() == EvidenceText.Style.QUESTION) {
				all.append('\n');
			}
			int from = all.length();
			all.append(line.text()).append('\n');
			StyleRange style = style(line.style());
			if (style != null) {
				style.start = from;
				style.length = line.text().length();
				styles.add(style);
			}
		}
		text.setRedraw(false);
		text.setText(all.toString().stripTrailing());
		int length = text.getCharCount();
		styles.forEach(style -> style.length = Math.min(style.length, length - style.start));
		text.setStyleRanges(styles.toArray(StyleRange[]::new));
		text.setRedraw(true);
	}

	private StyleRange style(EvidenceText.Style style) {
		StyleRange range = new StyleRange();
		switch (style) {
		case TITLE, QUESTION -> range.font = JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT);
		case STRUCK -> {
			range.strikeout = true;
			range.foreground = new Color(Palette.of(text.getDisplay()).muted());
		}
		default -> {
			return null;
		}
		}
		return range;
	}

	void setFocus() {
		// a view that becomes active by a click into a field keeps that field
		if (!Marked.holdsFocus(text.getParent())) {
			text.setFocus();
		}
	}
}
