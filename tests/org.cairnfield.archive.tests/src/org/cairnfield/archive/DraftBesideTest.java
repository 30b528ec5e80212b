package org.cairnfield.archive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

import org.cairnfield.model.Survey;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drafts that another thread writes while people go on working. */
class DraftBesideTest {

	private static final int ROUNDS = 50;

	@TempDir
	Path folder;
	private final ExecutorService beside = Executors.newSingleThreadExecutor();
	private DraftFixture fixture;

	@BeforeEach
	void make() throws IOException {
		fixture = new DraftFixture(folder);
	}

	@AfterEach
	void end() {
		beside.shutdownNow();
	}

	private Unsaved take(OpenArchive open) throws IOException {
		return open.drafts().unsaved(fixture.drafts, "A. Steward").orElseThrow();
	}

	private static void move(OpenArchive open, int row, double x) {
		Survey survey = SampleArchives.survey(open.archive(), "survey-0");
		survey.getSamples().setTable(survey.table().edit().position(row, x, 1).done());
	}

	private String broughtBack() throws IOException {
		try (OpenArchive open = fixture.open()) {
			open.drafts().apply(open.drafts().newest(fixture.drafts).orElseThrow());
			return ModelText.of(open.archive());
		}
	}

	@Test
	void keepsWhatWasThereWhenItWasTaken() throws Exception {
		String then;
		try (OpenArchive open = fixture.open()) {
			then = DraftFixture.change(open);
			Unsaved unsaved = take(open);
			open.archive().getSites().remove(0);
			open.archive().getLedgers().clear();
			open.archive().getSplits().clear();
			beside.submit(() -> {
				open.drafts().write(unsaved);
				return null;
			}).get();
			assertNotEquals(then, ModelText.of(open.archive()));
		}
		assertEquals(then, broughtBack());
	}

	@Test
	void isNotDisturbedByWorkThatGoesOn() throws Exception {
		String last = null;
		try (OpenArchive open = fixture.open()) {
			for (int round = 0; round < ROUNDS; round++) {
				move(open, round % 5, round + 1.5);
				Unsaved unsaved = take(open);
				last = ModelText.of(open.archive());
				CountDownLatch begun = new CountDownLatch(1);
				Future<?> writing = beside.submit(() -> {
					begun.countDown();
					open.drafts().write(unsaved);
					return null;
				});
				begun.await();
				move(open, round % 5, -round);
				writing.get();
			}
		}
		assertEquals(last, broughtBack());
	}

	@Test
	void keepsTheLaterOfTwoWhicheverIsWrittenFirst() throws IOException {
		String later;
		try (OpenArchive open = fixture.open()) {
			move(open, 0, 3);
			Unsaved first = take(open);
			move(open, 0, 4);
			later = ModelText.of(open.archive());
			Unsaved second = take(open);
			open.drafts().write(second);
			open.drafts().write(first);
		}
		assertEquals(later, broughtBack());
	}

	@Test
	void doesNotKeepWhatWasUndoneMeanwhile() throws IOException {
		try (OpenArchive open = fixture.open()) {
			move(open, 0, 3);
			Unsaved unsaved = take(open);
			open.drafts().discardOwn();
			open.drafts().write(unsaved);
			assertEquals(Optional.empty(), open.drafts().newest(fixture.drafts));
		}
	}

	@Test
	void doesNotKeepWhatWasSavedMeanwhile() throws IOException {
		try (OpenArchive open = fixture.open()) {
			move(open, 0, 3);
			Unsaved unsaved = take(open);
			open.save();
			open.drafts().write(unsaved);
			assertEquals(List.of(), open.drafts().all(fixture.drafts));
			move(open, 1, 5);
			open.drafts().write(take(open));
			assertEquals(1, open.drafts().all(fixture.drafts).size(), "what comes later is kept");
		}
	}
}
