package org.cairnfield.archive.internal.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import org.cairnfield.core.cluster.Role;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.text.Words;
import org.cairnfield.model.Cluster;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.ModelPackage;
import org.cairnfield.model.Split;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.LabelsBuilder;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.Proposals;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.Scope;
import org.eclipse.emf.ecore.EAttribute;

/**
 * A split: its parameters, its clusters, then a line for each sample, with what is proposed for it where something is.
 *
 * <pre>
 * cairnfield split 1
 * parameter  id        th-3
 * parameter  epsilon   110
 * …
 * cluster    0         213
 * sample         cluster  role    proposed  strength  margin  carrier        nearest
 * th-spring/S-1  0        core
 * th-spring/S-2  noise    noise   0         0.94      0.11    th-spring/S-1  0
 * end        2         8c736521
 * </pre>
 */
public final class SplitText {

	private static final String PARAMETER = "parameter";
	private static final String CLUSTER = "cluster";
	static final String COLUMNS = "sample\tcluster\trole\tproposed\tstrength\tmargin\tcarrier\tnearest";
	private static final int LABELLED = 3;
	private static final int PROPOSED = 8;
	private static final String NOISE = "noise";
	private static final String NONE = "-";
	private static final String YES = "yes";

	private SplitText() {
	}

	/** Writes the whole file. */
	public static void write(Split split, OutputStream out) throws IOException {
		LineWriter line = new LineWriter(out, FileKind.SPLIT);
		parameter(line, "id", split.getId());
		parameter(line, "scope", split.getScope() == null ? null : split.getScope().toString());
		parameter(line, "representation", split.getRepresentation());
		parameter(line, "distance", split.getDistance());
		line.text(PARAMETER).tab().text("epsilon").tab().decimal(split.getEpsilon()).finishLine();
		line.text(PARAMETER).tab().text("minPts").tab().number(split.getMinPts()).finishLine();
		if (split.getPcaShare() != null) {
			line.text(PARAMETER).tab().text("pcaShare").tab().decimal(split.getPcaShare()).finishLine();
		}
		parameter(line, "method", split.getMethod());
		line.text(PARAMETER).tab().text("seed").tab().number(split.getSeed()).finishLine();
		rule(line, "gate", split.getGate(), ModelPackage.Literals.SPLIT__GATE);
		rule(line, "threshold", split.getThreshold(), ModelPackage.Literals.SPLIT__THRESHOLD);
		parameter(line, "search", split.getSearch() == null ? null : split.getSearch().code());
		parameter(line, "searchReason", split.getSearchReason());
		parameter(line, "inRelease", split.isInRelease() ? YES : null);
		List<Cluster> clusters = new ArrayList<>(split.getClusters());
		clusters.sort((a, b) -> Integer.compare(a.getNumber(), b.getNumber()));
		for (Cluster cluster : clusters) {
			line.text(CLUSTER).tab().number(cluster.getNumber()).tab().number(cluster.getSize()).finishLine();
		}
		line.text(COLUMNS).finishLine();
		writeSamples(line, split);
		line.seal();
	}

	/** A line only where it is not what is usual, as files have none that were written before there was a choice. */
	private static void rule(LineWriter line, String name, double value, EAttribute attribute) throws IOException {
		if (!attribute.getDefaultValue().equals(value)) {
			line.text(PARAMETER).tab().text(name).tab().decimal(value).finishLine();
		}
	}

	private static void parameter(LineWriter line, String name, String value) throws IOException {
		if (value != null) {
			line.text(PARAMETER).tab().text(name).tab().field(value).finishLine();
		}
	}

	/** Labels and proposals are both sorted by sample. */
	private static void writeSamples(LineWriter line, Split split) throws IOException {
		Labels labels = split.getLabels() == null ? Labels.NONE : split.getLabels();
		List<Proposal> proposals = split.getProposals() == null ? List.of() : split.getProposals().all();
		int row = 0;
		int next = 0;
		while (row < labels.size() || next < proposals.size()) {
			SampleKey label = row < labels.size() ? labels.key(row) : null;
			SampleKey proposed = next < proposals.size() ? proposals.get(next).sample() : null;
			int order = label == null ? 1 : proposed == null ? -1 : label.compareTo(proposed);
			line.field((order <= 0 ? label : proposed).toString()).tab();
			if (order <= 0) {
				cluster(line, labels.cluster(row)).tab().text(labels.role(row).name().toLowerCase(Locale.ROOT));
				row++;
			} else {
				line.text(NONE).tab().text(NONE);
			}
			if (order >= 0) {
				proposal(line, proposals.get(next++));
			}
			line.end();
		}
	}

	private static LineWriter cluster(LineWriter line, int cluster) {
		return cluster == Labels.NOISE ? line.text(NOISE) : line.number(cluster);
	}

	private static void proposal(LineWriter line, Proposal proposal) {
		line.tab().number(proposal.cluster()).tab().decimal(proposal.strengthR()).tab();
		if (Double.isNaN(proposal.margin())) {
			line.text(NONE);
		} else {
			line.decimal(proposal.margin());
		}
		line.tab().field(proposal.carrier().toString()).tab();
		cluster(line, proposal.nearestCluster());
	}

	/** Reads the whole file; what can not be read is reported and left out. */
	public static Split read(InputStream in, Migrations migrations, PartReport report) throws IOException {
		Reading reading = new Reading();
		new RecordReader(FileKind.SPLIT, report).read(migrations.bring(FileKind.SPLIT, in, report), reading::read);
		return reading.split(report);
	}

	private static final class Reading {

		private final Split split = ModelFactory.eINSTANCE.createSplit();
		private final LabelsBuilder labels = Labels.builder();
		private final List<Proposal> proposals = new ArrayList<>();
		private final SeenIds seen = new SeenIds();
		private final Set<Integer> clusters = new HashSet<>();
		private final Map<String, Role> roles = new HashMap<>();
		private boolean columns;

		Reading() {
			for (Role role : Role.values()) {
				roles.put(role.name().toLowerCase(Locale.ROOT), role);
			}
		}

		boolean read(LineReader line) throws IOException {
			if (columns) {
				readSample(line);
				return true;
			}
			if (line.whole().equals(COLUMNS)) {
				columns = true;
			} else if (line.fields() == 3 && line.is(0, PARAMETER)) {
				readParameter(line);
			} else if (line.fields() == 3 && line.is(0, CLUSTER)) {
				Cluster cluster = ModelFactory.eINSTANCE.createCluster();
				cluster.setNumber(line.intNumber(1));
				cluster.setSize(line.intNumber(2));
				if (!clusters.add(cluster.getNumber())) {
					throw new Unreadable(Words.bind(Messages.SplitText_aSecondCluster, cluster.getNumber()));
				}
				split.getClusters().add(cluster);
			} else {
				throw new Unreadable(Messages.SplitText_neitherAParameterNorA);
			}
			return false;
		}

		private void readParameter(LineReader line) throws Unreadable {
			switch (line.field(1)) {
			case "id" -> split.setId(line.field(2));
			case "scope" -> split.setScope(Scope.parse(line.field(2)));
			case "representation" -> split.setRepresentation(line.field(2));
			case "distance" -> split.setDistance(line.field(2));
			case "epsilon" -> split.setEpsilon(line.decimal(2));
			case "minPts" -> split.setMinPts(line.intNumber(2));
			case "pcaShare" -> split.setPcaShare(line.decimal(2));
			case "method" -> split.setMethod(line.field(2));
			case "seed" -> split.setSeed(line.number(2));
			case "gate" -> split.setGate(line.decimal(2));
			case "threshold" -> split.setThreshold(line.decimal(2));
			case "search" -> split.setSearch(Search.parse(line.field(2)));
			case "searchReason" -> split.setSearchReason(line.field(2));
			case "inRelease" -> split.setInRelease(line.field(2).equals(YES));
			default -> throw new Unreadable(Words.bind(Messages.SplitText_noParameterOfASplit, line.shown(1)));
			}
		}

		private void readSample(LineReader line) throws Unreadable {
			if (line.fields() != LABELLED && line.fields() != PROPOSED) {
				throw new Unreadable(
						Words.bind(Messages.SplitText_hasFieldsInPlaceOf, line.fields(), LABELLED, PROPOSED));
			}
			SampleKey key = SampleKey.parse(line.field(0));
			Proposal proposal = line.fields() == PROPOSED ? new Proposal(key, line.intNumber(3), line.decimal(4),
					line.is(5, NONE) ? Double.NaN : line.decimal(5), SampleKey.parse(line.field(6)), cluster(line, 7))
					: null;
			boolean labelled = !line.is(1, NONE);
			Role role = labelled ? roles.get(line.field(2)) : null;
			if (labelled && role == null || !labelled && (proposal == null || !line.is(2, NONE))) {
				throw new Unreadable(Words.bind(Messages.SplitText_noRoleOfASample, line.shown(2)));
			}
			// survey and sample with a character between them that neither has, in the order of keys
			if (!seen.isNew(key.survey() + '\0' + key.sample())) {
				throw new Unreadable(Words.bind(Messages.SplitText_aSecondLineForSample, line.shown(0)));
			}
			if (labelled) {
				labels.add(key, cluster(line, 1), role);
			}
			if (proposal != null) {
				proposals.add(proposal);
			}
		}

		private static int cluster(LineReader line, int field) throws Unreadable {
			if (line.is(field, NOISE)) {
				return Labels.NOISE;
			}
			int number = line.intNumber(field);
			if (number < 0) {
				throw new Unreadable(Words.bind(Messages.SplitText_noNumberOfACluster, line.shown(field)));
			}
			return number;
		}

		Split split(PartReport report) {
			try {
				split.setLabels(labels.build());
				split.setProposals(Proposals.of(proposals));
			} catch (IllegalArgumentException e) {
				report.damage(0, e.getMessage());
			}
			return split;
		}
	}
}
