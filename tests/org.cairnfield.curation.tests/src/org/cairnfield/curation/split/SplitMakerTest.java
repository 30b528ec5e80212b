package org.cairnfield.curation.split;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.cairnfield.core.choose.AutomaticChoice;
import org.cairnfield.core.match.Search;
import org.cairnfield.core.task.Workers;
import org.cairnfield.model.Archive;
import org.cairnfield.model.Site;
import org.cairnfield.model.Split;
import org.cairnfield.model.edit.SampleRef;
import org.cairnfield.model.edit.SetSampleStateCommand;
import org.cairnfield.model.values.Scope;
import org.cairnfield.testkit.SmallMaps;
import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.ecore.util.Diagnostician;
import org.junit.jupiter.api.Test;

class SplitMakerTest {

	private final Archive archive = SmallArchives.simulated();
	private final Site site = archive.getSites().get(0);
	private final Workers workers = Workers.inline();
	private final SplitMaker maker = new SplitMaker(new SplitStudies(8));

	private SplitMaker.Made make(String name, Scope scope, boolean perFloor, SplitRequest request) {
		return maker.make(archive, new SplitPlan(name, scope, perFloor, request), workers);
	}

	@Test
	void keepsASplitThatIsTheSameOnTheMap() {
		Split split = make("whole", Scope.ARCHIVE, false, SplitRequest.automatic(1).published(120, 4)).splits().get(0);
		assertEquals(Diagnostic.OK, Diagnostician.INSTANCE.validate(split).getSeverity());
		SplitOnMap onMap = SplitOnMap.of(archive, split);
		Trial trial = new SplitStudies(1).study(archive, Scope.ARCHIVE, SplitRequest.automatic(1)).split(120, 4,
				workers);
		assertEquals(400, onMap.size());
		for (int s = 0; s < onMap.size(); s++) {
			assertEquals(trial.cluster(s), onMap.cluster(s));
			assertEquals(s, onMap.index(onMap.key(s)));
			assertEquals(trial.clustering().role(s), onMap.clustering().role(s));
		}
		assertEquals(trial.clusters(), split.getClusters().size());
		assertEquals(trial.sizes()[0], split.getClusters().get(0).getSize());
	}

	@Test
	void makesOneSplitForEachFloor() {
		SplitMaker.Made made = make("floors", Scope.site(site.getId()), true,
				SplitRequest.automatic(1).published(120, 4));
		assertEquals(SplitScopes.floors(archive, Scope.ARCHIVE), made.splits().stream().map(Split::getScope).toList());
		assertEquals(2, made.splits().size());
		assertEquals(400, made.splits().stream().mapToInt(s -> s.getLabels().size()).sum());
		assertEquals("floors." + site.getId() + ".0", made.splits().get(0).getId());
	}

	@Test
	void choosesParametersThatAreLeftOpenAndSaysWhy() {
		SplitRequest open = SplitRequest.named("positive", "city-block", OptionalDouble.empty(), OptionalInt.of(4),
				OptionalDouble.empty(), Optional.empty(), 1);
		SplitMaker.Made made = make("open", Scope.ARCHIVE, false, open);
		assertEquals(4, made.splits().get(0).getMinPts());
		assertTrue(made.splits().get(0).getEpsilon() > 0);
		assertTrue(made.notes().get(0).contains("held-out"), made.notes()::toString);
		assertEquals(made.choices().get("open").best().search(), made.splits().get(0).getSearch());
		assertTrue(made.splits().get(0).getSearchReason().contains("held-out"), made.splits().get(0)::getSearchReason);
	}

	@Test
	void saysWhatAChoiceHadNoTimeFor() {
		AutomaticChoice.Tried tried = new AutomaticChoice.Tried(90, 3, Search.USUAL, 2, 0.05, 0.01);
		String all = SplitMaker.reason(
				new AutomaticChoice.Choice(List.of(tried), 0.06, 100, new AutomaticChoice.LeftOut(List.of(), 0, 0)),
				tried);
		assertFalse(all.contains("left out"), all);
		String some = SplitMaker.reason(new AutomaticChoice.Choice(List.of(tried), 0.06, 100,
				new AutomaticChoice.LeftOut(List.of("a", "b", "c", "d", "e", "f"), 1, 2)), tried);
		assertTrue(some.endsWith("; left out for want of time: 6 sites (a, b, c, d, e, …), 1 hold-out, 2 values of ε"),
				some);
	}

	@Test
	void takesEpsilonAndSearchAsGiven() {
		Search search = Search.parse("cut groups 2 cells 4 relative k 5 weighted");
		SplitRequest both = SplitRequest.named("positive", "city-block", OptionalDouble.of(120), OptionalInt.empty(),
				OptionalDouble.empty(),
				Optional.of(search), 1);
		SplitMaker.Made made = make("both", Scope.ARCHIVE, false, both);
		assertEquals(search, made.splits().get(0).getSearch());
		assertEquals(120, made.splits().get(0).getEpsilon());
		assertTrue(made.choices().isEmpty(), "nothing was chosen");
		SplitRequest epsilonAlone = SplitRequest.named("positive", "city-block", OptionalDouble.of(120),
				OptionalInt.of(4), OptionalDouble.empty(),
				Optional.empty(), 1);
		made = make("epsilon", Scope.ARCHIVE, false, epsilonAlone);
		assertEquals(120, made.splits().get(0).getEpsilon());
		assertTrue(made.choices().get("epsilon").tried().stream().allMatch(t -> t.epsilon() == 120 && t.minPts() == 4));
	}

	@Test
	void takesEpsilonInTheMiddleOfTheCurveOfComponents() {
		Split split = make("reduced", Scope.ARCHIVE, false,
				SmallRuns.reduced(0.9, OptionalDouble.empty(), OptionalInt.empty())).splits().get(0);
		double[] curve = new SplitStudies(1)
				.study(archive, Scope.ARCHIVE, SmallRuns.reduced(0.9, OptionalDouble.empty(), OptionalInt.empty()))
				.curve(SplitStudy.USUAL_MIN_PTS, workers).ascending();
		assertEquals(curve[curve.length / 2], split.getEpsilon());
		assertEquals(Search.PUBLISHED, split.getSearch());
	}

	@Test
	void aLaterSplitChangesNothingByItself() {
		BasicCommandStack stack = new BasicCommandStack();
		Split first = make("first", Scope.ARCHIVE, false, SplitRequest.automatic(1).published(120, 4)).splits().get(0);
		Split second = make("second", Scope.ARCHIVE, false, SplitRequest.automatic(1).published(90, 4)).splits().get(0);
		stack.execute(new AddSplitsCommand(archive, List.of(first)));
		stack.execute(new AddSplitsCommand(archive, List.of(second)));
		assertEquals(List.of(first), SplitsInRelease.of(archive));
		stack.execute(new SplitsInRelease.Choose(archive, List.of(second)));
		assertEquals(List.of(second), SplitsInRelease.of(archive));
		assertFalse(new SplitsInRelease.Choose(archive, List.of(second)).canExecute());
		stack.undo();
		assertEquals(List.of(first), SplitsInRelease.of(archive));
		first.setInRelease(false); // as in an archive from before there was a choice
		assertEquals(List.of(second), SplitsInRelease.of(archive));
		Split third = make("third", Scope.ARCHIVE, false, SplitRequest.automatic(1).published(80, 4)).splits().get(0);
		stack.execute(new AddSplitsCommand(archive, List.of(third)));
		assertEquals(List.of(second), SplitsInRelease.of(archive));
		stack.undo();
		assertFalse(second.isInRelease());
	}

	@Test
	void splitsOfAReleaseAreNamedAndDoNotOverlap() {
		List<Split> floors = make("floors", Scope.ARCHIVE, true, SplitRequest.automatic(1).published(120, 4)).splits();
		Split whole = make("whole", Scope.ARCHIVE, false, SplitRequest.automatic(1).published(120, 4)).splits().get(0);
		new AddSplitsCommand(archive, floors).execute();
		new AddSplitsCommand(archive, List.of(whole)).execute();
		assertEquals(floors, SplitsInRelease.of(archive));
		List<String> names = floors.stream().map(Split::getId).toList();
		assertEquals(floors, SplitsInRelease.named(archive, names));
		assertTrue(assertThrows(UnfitSurveyException.class,
				() -> SplitsInRelease.named(archive, List.of(names.get(0), "whole"))).getMessage()
				.contains("overlap"));
		assertTrue(assertThrows(UnfitSurveyException.class, () -> SplitsInRelease.named(archive, List.of("none")))
				.getMessage().contains("whole"));
	}

	@Test
	void listsScopesWithTheirSamples() {
		List<SplitScopes.Entry> entries = SplitScopes.of(archive);
		assertEquals(
				List.of(Scope.ARCHIVE, Scope.site(site.getId()), Scope.floor(site.getId(), 0),
						Scope.floor(site.getId(), 1)),
				entries.stream().map(SplitScopes.Entry::scope).toList());
		assertEquals(400, entries.get(0).samples());
		assertEquals(400, entries.get(2).samples() + entries.get(3).samples());
	}

	@Test
	void addsAndRemovesSplitsUndoably() {
		BasicCommandStack stack = new BasicCommandStack();
		Split split = make("whole", Scope.ARCHIVE, false, SplitRequest.automatic(1).published(120, 4)).splits().get(0);
		stack.execute(new AddSplitsCommand(archive, List.of(split)));
		assertEquals(List.of(split), archive.getSplits());
		assertFalse(new AddSplitsCommand(archive,
				make("WHOLE", Scope.ARCHIVE, false, SplitRequest.automatic(1).published(90, 4)).splits())
				.canExecute());
		assertEquals("whole-2", SplitNames.free(archive, "whole"));
		stack.execute(new RemoveSplitCommand(archive, split));
		assertTrue(archive.getSplits().isEmpty());
		stack.undo();
		assertEquals(List.of(split), archive.getSplits());
		stack.undo();
		assertTrue(archive.getSplits().isEmpty());
		stack.redo();
		assertEquals(List.of(split), archive.getSplits());
	}

	@Test
	void tellsWhatTheMapHasLostAndGained() {
		Split split = SmallArchives.split(archive, "whole", 120, 4);
		SetSampleStateCommand.setAside(List.of(new SampleRef(site.getSurveys().get(0), 0)), "doubtful").execute();
		SmallArchives.add(archive, "autumn", org.cairnfield.model.SurveyKind.TRAINING, SmallMaps.visit(7));
		SplitOnMap onMap = SplitOnMap.of(archive, split);
		assertEquals(399, onMap.size());
		assertEquals(1, onMap.gone());
		assertEquals(7, onMap.added());
	}

	@Test
	void numbersClustersWithoutGaps() {
		var gap = new org.cairnfield.core.cluster.Clustering(new int[] { 0, 2, -1, 2 }, null);
		org.junit.jupiter.api.Assertions.assertArrayEquals(new int[] { 0, 1, -1, 1 }, SplitOnMap.dense(gap).labels());
	}

	@Test
	void refusesWhatCannotBeSplit() {
		assertThrows(UnfitSurveyException.class,
				() -> make("x", Scope.site("nowhere"), false, SplitRequest.automatic(1).published(120, 4)));
		assertThrows(IllegalArgumentException.class,
				() -> make("x", Scope.ARCHIVE, false, SplitRequest.automatic(1).published(-1, 4)));
		assertThrows(IllegalArgumentException.class,
				() -> make("x", Scope.ARCHIVE, false, SplitRequest.automatic(1).published(1, 0)));
		assertThrows(IllegalArgumentException.class,
				() -> new SplitPlan("a/b", Scope.ARCHIVE, false, SplitRequest.automatic(1)));
	}
}
