package org.cairnfield.model.edit;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

import org.cairnfield.core.text.Words;
import org.cairnfield.model.AccessPoint;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Assignment;
import org.cairnfield.model.Claim;
import org.cairnfield.model.Cluster;
import org.cairnfield.model.Comment;
import org.cairnfield.model.Conflict;
import org.cairnfield.model.Device;
import org.cairnfield.model.Floor;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.RuleSetting;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.Waiver;
import org.cairnfield.model.check.SiblingNames;
import org.cairnfield.model.conflict.Place;
import org.cairnfield.model.util.ModelSwitch;
import org.cairnfield.model.values.KnownPlace;
import org.eclipse.emf.ecore.EObject;

/** Names of objects of the model, as people read them; see {@link SiblingNames}. */
public final class ModelText {

	private static final ModelSwitch<String> NAMES = new ModelSwitch<>() {

		@Override
		public String caseArchive(Archive archive) {
			return or(archive.getName(), Messages.ModelText_archive);
		}

		@Override
		public String caseSite(Site site) {
			return SiblingNames.label(site);
		}

		@Override
		public String caseFloor(Floor floor) {
			return SiblingNames.label(floor);
		}

		@Override
		public String caseAccessPoint(AccessPoint accessPoint) {
			return address(accessPoint) + (accessPoint.isKept() ? "" : Messages.ModelText_setAside);
		}

		@Override
		public String caseDevice(Device device) {
			return SiblingNames.label(device);
		}

		@Override
		public String caseSurvey(Survey survey) {
			LocalDate date = survey.getDate();
			return SiblingNames.label(survey) + (date == null ? "" : ", " + date);
		}

		@Override
		public String caseSamples(Samples samples) {
			return Messages.ModelText_samples;
		}

		@Override
		public String caseSplit(Split split) {
			return or(split.getId(), Messages.ModelText_split);
		}

		@Override
		public String caseCluster(Cluster cluster) {
			return Words.bind(Messages.ModelText_cluster, cluster.getNumber());
		}

		@Override
		public String caseLedger(Ledger ledger) {
			return or(ledger.getId(), Messages.ModelText_ledger);
		}

		@Override
		public String caseVerdict(Verdict verdict) {
			String cluster = switch (verdict.getDecision()) {
			case MOVE -> Words.bind(Messages.ModelText_toCluster, verdict.getCluster());
			case POOL, FAULTY -> "";
			default -> Words.bind(Messages.ModelText_forCluster, verdict.getCluster());
			};
			return verdict.getDecision() + " " + verdict.getSample() + cluster;
		}

		@Override
		public String caseWaiver(Waiver waiver) {
			return or(waiver.getRule(), Messages.ModelText_waiver)
					+ (waiver.getReason() == null ? "" : ": " + waiver.getReason());
		}

		@Override
		public String caseConflict(Conflict conflict) {
			return conflict.getPlace() + ": " + conflict.getUnit();
		}

		@Override
		public String caseClaim(Claim claim) {
			return Words.bind(Messages.ModelText_by, or(claim.getValue(), "none"), claim.getPerson());
		}

		@Override
		public String caseComment(Comment comment) {
			return comment.getPerson() + ": " + comment.getText();
		}

		@Override
		public String caseAssignment(Assignment assignment) {
			return Words.bind(Messages.ModelText_to, assignment.getShare(), assignment.getReviewer());
		}

		@Override
		public String caseRuleSetting(RuleSetting setting) {
			return Place.key(setting) + ": " + setting.getValue();
		}
	};

	private ModelText() {
	}

	/** The name of an object, without counts; empty for one that is not of the model. */
	public static String name(EObject object) {
		return or(NAMES.doSwitch(object), "");
	}

	/** What maps and findings call an access point: its address or, where it has none, its id. */
	public static String address(AccessPoint accessPoint) {
		return or(accessPoint.getAddress(), accessPoint.getId());
	}

	/** A place in words, such as "Lantern Store, Floor 1, x 12.50 m, y 3.00 m". @param archive that names site and floor; null for ids */
	public static String place(KnownPlace place, Archive archive) {
		Optional<Site> site = archive == null ? Optional.empty() : ArchiveIndex.of(archive).site(place.site());
		String floor = site.flatMap(of -> ArchiveIndex.floor(of, place.level())).map(ModelText::name)
				.orElse(Words.bind(Messages.ModelText_floor, place.level()));
		return site.map(ModelText::name).orElse(place.site()) + ", " + floor
				+ String.format(Locale.ROOT, ", x %.2f m, y %.2f m", place.xMetres(), place.yMetres());
	}

	private static String or(String text, String otherwise) {
		return text == null || text.isBlank() ? otherwise == null ? "" : otherwise : text;
	}
}
