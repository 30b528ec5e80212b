package org.cairnfield.archive;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

import org.cairnfield.model.Archive;
import org.cairnfield.model.Cluster;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.SampleTable;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Everything that a model holds, as text in an order of its own: to compare two models without the code that writes and
 * reads files.
 */
public final class ModelText {

	private final TreeSet<String> lines = new TreeSet<>();

	private ModelText() {
	}

	/** Equal for models with the same content. */
	public static String of(Archive archive) {
		ModelText text = new ModelText();
		text.add("archive", archive);
		archive.getAccessPoints().forEach(accessPoint -> text.add("access point " + accessPoint.getId(), accessPoint));
		archive.getDevices().forEach(device -> text.add("device " + device.getId(), device));
		archive.getWaivers()
				.forEach(waiver -> text.add("waiver " + waiver.getContentKey() + waiver.getReason(), waiver));
		archive.getRuleSettings().forEach(
				setting -> text.add("rule setting " + setting.getRule() + ' ' + setting.getParameter(), setting));
		archive.getSites().forEach(text::addSite);
		archive.getSplits().forEach(text::addSplit);
		archive.getLedgers().forEach(text::addLedger);
		return String.join("\n", text.lines);
	}

	private void add(String name, EObject object) {
		for (EAttribute attribute : object.eClass().getEAllAttributes()) {
			if (!List.of("table", "labels", "proposals").contains(attribute.getName())) {
				lines.add(name + " | " + attribute.getName() + " = " + object.eGet(attribute) + " |");
			}
		}
		for (EReference reference : object.eClass().getEAllReferences()) {
			if (!reference.isContainment() && !reference.isMany() && object.eGet(reference) instanceof EObject other) {
				lines.add(name + " -> " + reference.getName() + " = " + EcoreUtil.getID(other));
			}
		}
	}

	private void addSite(Site site) {
		add("site " + site.getId(), site);
		site.getFloors().forEach(floor -> add("floor " + site.getId() + '/' + floor.getLevel(), floor));
		for (Survey survey : site.getSurveys()) {
			add("survey " + survey.getId(), survey);
			SampleTable table = survey.table();
			lines.add("survey " + survey.getId() + " has " + (survey.getSamples() == null ? "no table" : table.size()));
			for (int row = 0; row < table.size(); row++) {
				lines.add("survey " + survey.getId() + " sample " + table.sample(row));
			}
		}
	}

	private void addSplit(Split split) {
		add("split " + split.getId(), split);
		for (Cluster cluster : split.getClusters()) {
			add("split " + split.getId() + " cluster " + cluster.getNumber(), cluster);
		}
		Labels labels = split.getLabels();
		for (int row = 0; row < labels.size(); row++) {
			lines.add("split " + split.getId() + " label " + labels.key(row) + ' ' + labels.cluster(row) + ' '
					+ labels.role(row));
		}
		split.getProposals().all().forEach(proposal -> lines.add("split " + split.getId() + ' ' + proposal));
	}

	private void addLedger(Ledger ledger) {
		add("ledger " + ledger.getId(), ledger);
		List<EObject> verdicts = new ArrayList<>(ledger.getVerdicts());
		for (int i = 0; i < verdicts.size(); i++) {
			add("ledger " + ledger.getId() + ' ' + i, verdicts.get(i));
		}
	}
}
