package org.cairnfield.ui.plan.internal.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.cairnfield.core.cluster.Role;
import org.cairnfield.curation.samples.SampleRows;
import org.cairnfield.model.Floor;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Samples;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.Survey;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.LabelsBuilder;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.Proposals;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.SampleTable;
import org.cairnfield.model.values.SampleTableBuilder;
import org.cairnfield.ui.plan.PlanLegend;
import org.cairnfield.ui.plan.SampleColours;
import org.cairnfield.ui.plan.SampleLook;
import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.Test;

class ByClusterTest {

	private static final RGB WHITE = new RGB(255, 255, 255);
	private static final String SURVEY = "th-spring";

	private final LabelsBuilder labels = Labels.builder();
	private final List<Proposal> proposals = new ArrayList<>();
	private final SampleTableBuilder table = SampleTable.builder();
	private int samples;

	private SampleKey sample(int level, int cluster) {
		String id = String.format(Locale.ROOT, "S%03d", samples++);
		table.sample(id, level, samples, 2).reading("ap", -50);
		SampleKey key = new SampleKey(SURVEY, id);
		labels.add(key, cluster, cluster < 0 ? Role.NOISE : Role.CORE);
		return key;
	}

	private void proposed(int cluster, SampleKey carrier) {
		proposals.add(new Proposal(sample(0, Labels.NOISE), cluster, 0.9, 0.1, carrier, cluster));
	}

	private SampleColours colours() {
		Site site = ModelFactory.eINSTANCE.createSite();
		site.setId("th");
		Floor floor = ModelFactory.eINSTANCE.createFloor();
		floor.setLevel(0);
		site.getFloors().add(floor);
		Survey survey = ModelFactory.eINSTANCE.createSurvey();
		survey.setId(SURVEY);
		Samples all = ModelFactory.eINSTANCE.createSamples();
		all.setTable(table.build());
		survey.setSamples(all);
		site.getSurveys().add(survey);
		Split split = ModelFactory.eINSTANCE.createSplit();
		split.setId("whole");
		split.setLabels(labels.build());
		split.setProposals(Proposals.of(proposals));
		split.setThreshold(0.1);
		return ByCluster.of(SampleRows.of(floor), split, WHITE);
	}

	private static List<String> legend(SampleColours colours) {
		return colours.legend().entries().stream().map(entry -> entry.label() + " " + entry.count()).toList();
	}

	@Test
	void listsClustersThatAreProposedButHaveNoMemberOnTheFloor() {
		SampleKey here = sample(0, 3);
		SampleKey above = sample(1, 5);
		proposed(5, above);
		proposed(5, above);
		proposed(3, here);
		SampleColours colours = colours();
		assertEquals(List.of("C3 1", "proposed for C5, not on this floor 2", "proposed for others 1"), legend(colours));
		List<SampleLook> looks = colours.legend().entries().stream().map(PlanLegend.Entry::look).toList();
		assertEquals(SampleLook.Fill.DOTTED, looks.get(1).fill());
		assertNotEquals(looks.get(0).rgb(), looks.get(1).rgb(), "a colour of its own");
	}

	@Test
	void countsAllProposalsTogetherWhereEachClusterIsOnTheFloor() {
		SampleKey one = sample(0, 3);
		SampleKey other = sample(0, 4);
		proposed(3, one);
		proposed(4, other);
		assertEquals(List.of("C3 1", "C4 1", "proposed 2"), legend(colours()));
	}

	@Test
	void keepsTheLegendShortWhereManyClustersAreElsewhere() {
		for (int cluster = 0; cluster < 9; cluster++) {
			proposed(cluster, sample(1, cluster));
		}
		List<String> legend = legend(colours());
		assertEquals(8, legend.size());
		assertEquals("proposed for others 2", legend.get(7));
	}
}
