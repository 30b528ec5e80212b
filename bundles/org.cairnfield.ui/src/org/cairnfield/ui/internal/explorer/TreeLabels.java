package org.cairnfield.ui.internal.explorer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import org.cairnfield.curation.maps.ArchiveMap;
import org.cairnfield.curation.maps.Subjects;
import org.cairnfield.curation.rules.Finding;
import org.cairnfield.curation.rules.Severity;
import org.cairnfield.curation.rules.Subject;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Device;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.SurveyKind;
import org.cairnfield.model.edit.ArchiveIndex;
import org.cairnfield.model.edit.ModelText;
import org.cairnfield.model.edit.SampleCounts;
import org.cairnfield.model.values.Count;
import org.cairnfield.ui.charts.colour.Palette;
import org.cairnfield.ui.internal.labels.ModelImages;
import org.cairnfield.ui.session.Findings;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.preference.JFacePreferences;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.StyledCellLabelProvider;
import org.eclipse.jface.viewers.StyledString.Styler;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.jface.viewers.ViewerCell;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.TextStyle;
import org.eclipse.swt.widgets.Display;

/** Names with counts of samples, of findings and of what a split calls noise: "Floor 1  388  3 errors". */
final class TreeLabels extends StyledCellLabelProvider {

	/** A line through the name says that it is set aside. */
	private static final Styler SET_ASIDE = new Styler() {
		@Override
		public void applyStyles(TextStyle style) {
			style.strikeout = true;
		}
	};

	private static final Styler COUNT = reads(JFacePreferences.COUNTER_COLOR);
	private static final Styler FINDING = reads(JFacePreferences.DECORATIONS_COLOR);
	private static final Styler QUALIFIER = reads(JFacePreferences.QUALIFIER_COLOR);

	private final ModelImages images;
	private final SampleCounts counts = new SampleCounts();
	private Map<Object, int[]> findings = Map.of();

	TreeLabels(ModelImages images) {
		this.images = images;
	}

	/** In a colour of the platform, which is made to read under the theme of the desktop. */
	private static Styler reads(String colour) {
		return new Styler() {
			@Override
			public void applyStyles(TextStyle style) {
				style.foreground = new Color(
						Palette.of(Display.getCurrent()).readable(JFaceResources.getColorRegistry().getRGB(colour)));
			}
		};
	}

	/** What the labels count by. */
	SampleCounts counts() {
		return counts;
	}

	/** Counts errors and warnings for what they are about, and for what contains it. */
	void count(Archive archive, Findings found) {
		Map<Object, int[]> counted = new HashMap<>();
		ArchiveIndex index = ArchiveIndex.of(archive);
		for (Finding finding : found.open()) {
			if (finding.severity() != Severity.NOTE) {
				List<Object> about = new ArrayList<>();
				for (Subject subject : finding.subjects()) {
					about.addAll(objects(index, subject));
				}
				about.add(archive);
				about.stream().distinct()
						.forEach(object -> counted.computeIfAbsent(object, o -> new int[2])[finding.severity()
								.ordinal()]++);
			}
		}
		findings = counted;
	}

	/** What a subject is or belongs to, short of the archive. */
	private static List<EObject> objects(ArchiveIndex index, Subject subject) {
		List<EObject> objects = new ArrayList<>();
		if (subject instanceof Subject.OfSample sample) {
			index.sample(sample.id()).flatMap(ArchiveIndex::floor).ifPresent(objects::add);
		}
		Optional<? extends EObject> object = Subjects.object(index, subject);
		object.ifPresent(objects::add);
		object.map(EObject::eContainer).filter(Site.class::isInstance).ifPresent(objects::add);
		return objects;
	}

	@Override
	public void update(ViewerCell cell) {
		Object element = cell.getElement();
		StyledString text = text(element);
		cell.setText(text.getString());
		cell.setStyleRanges(text.getStyleRanges());
		cell.setImage(element instanceof EObject object ? images.of(object.eClass())
				: images.of(element instanceof Group group ? group.kind().type : ModelPackage.Literals.FLOOR));
	}

	private StyledString text(Object element) {
		StyledString text = new StyledString();
		if (element instanceof Group group) {
			text.append(group.kind().title);
			text.append("  " + group.members().size(), COUNT);
			return text;
		}
		if (element instanceof Strays strays) {
			text.append(Strays.TITLE);
			text.append("  " + counts.onNoFloor(strays.site()), COUNT);
			return text;
		}
		EObject object = (EObject) element;
		boolean aside = object instanceof AccessPoint accessPoint && !accessPoint.isKept();
		text.append(ModelText.name(object), aside ? SET_ASIDE : null);
		if (object instanceof Device device && device.isCalibrated()) {
			text.append(String.format(Locale.ROOT, Messages.TreeLabels_db, device.getOffsetDb()), COUNT);
		}
		if (object instanceof Survey survey && survey.getKind() == SurveyKind.TRAINING
				&& !ArchiveMap.isOfTheMap(survey)) {
			text.append(Messages.TreeLabels_notInTheMap, QUALIFIER);
		}
		OptionalInt samples = counts.of(object);
		if (samples.isPresent()) {
			text.append("  " + samples.getAsInt(), COUNT);
		}
		if (object instanceof Split split && split.getLabels() != null) {
			append(text, split.getLabels().noise(), "outlier");
		}
		int[] found = findings.get(object);
		if (found != null) {
			int errors = found[Severity.ERROR.ordinal()]; // warnings are told where there is nothing worse
			append(text, errors > 0 ? errors : found[Severity.WARNING.ordinal()], errors > 0 ? "error" : "warning");
		}
		return text;
	}

	private static void append(StyledString text, int count, String what) {
		if (count > 0) {
			text.append("  " + Count.of(count, what), FINDING);
		}
	}

	/** The text without styles, for filters. */
	String plain(Object element) {
		return text(element).getString();
	}
}
