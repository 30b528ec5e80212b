package org.cairnfield.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.cairnfield.archive.ArchiveStore;
import org.cairnfield.archive.OpenArchive;
import org.cairnfield.archive.history.Person;
import org.cairnfield.core.task.Workers;
import org.cairnfield.curation.decide.ReasonCode;
import org.cairnfield.curation.measure.PackRequest;
import org.cairnfield.curation.release.GateCheck;
import org.cairnfield.curation.release.KnownReleases;
import org.cairnfield.curation.release.ReleaseBook;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Round;
import org.cairnfield.model.Split;
import org.cairnfield.model.Verdict;
import org.cairnfield.testkit.SmallArchive;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReleaseReportTest {

	@TempDir
	Path folder;

	private String page() throws Exception {
		try (OpenArchive open = SmallArchive.create(new ArchiveStore(), folder.resolve("quay"))) {
			open.archive().setName("<script>alert(1)</script> & \"quay\"");
			GateCheck check = new ReleaseBook(open, Clock.systemUTC(), new KnownReleases(null)).ask(PackRequest.USUAL,
					Workers.inline());
			String page = ReleaseReport.html(open.archive(), null, check, open.digest(), List.of());
			assertEquals(page, ReleaseReport.html(open.archive(), null, check, open.digest(), List.of()));
			return page;
		}
	}

	@Test
	void tellsEverythingThatSomebodyWhoDecidesMustKnow() throws Exception {
		String page = page();
		for (String heading : List.of("What the map is", "How it was cleaned", "How it was split",
				"How it was reviewed", "How it positions",
				"Gates", "What changed", "Cautions")) {
			assertTrue(page.contains("<h2>" + heading + "</h2>"), heading);
		}
		for (String said : List.of("24 samples", "th-spring", "undecided", "NOT MET", "6 test samples",
				"not for safety of life", "personal data")) {
			assertTrue(page.contains(said), said);
		}
	}

	@Test
	void tellsWhatWasDoneToTheMap() throws Exception {
		try (OpenArchive open = SmallArchive.create(new ArchiveStore(), folder.resolve("quay"))) {
			ReleaseBook book = new ReleaseBook(open, Clock.systemUTC(), new KnownReleases(null));
			assertEquals(List.of(), book.steps(null), "before the first save point");
			open.savePoint(Person.named("A. Steward"), null);
			GateCheck check = book.ask(PackRequest.USUAL, Workers.inline());
			String page = ReleaseReport.html(open.archive(), null, check, open.digest(), book.steps(null));
			assertTrue(page.contains("<td>A. Steward</td><td>30 samples added"), page);
		}
	}

	@Test
	void tellsWhichBandsWereApprovedAfterAnAudit() throws Exception {
		try (OpenArchive open = SmallArchive.create(new ArchiveStore(), folder.resolve("quay"))) {
			Split split = open.archive().getSplits().get(0);
			Ledger ledger = ModelFactory.eINSTANCE.createLedger();
			ledger.setId(split.getId());
			for (String id : List.of("v1", "v2")) {
				Verdict verdict = ModelFactory.eINSTANCE.createVerdict();
				verdict.setId(id);
				verdict.setSplit(split.getId());
				verdict.setSample(split.getProposals().all().get(0).sample());
				verdict.setDecision(Decision.APPROVE);
				verdict.setRound(Round.FIRST);
				verdict.setReasonCode(ReasonCode.BAND_AUDITED.code());
				verdict.setText("audit-high-1: 3 of 5 proposals looked at");
				verdict.setPerson("R. Reviewer");
				verdict.setTime(Instant.parse("2031-04-08T09:00:00Z"));
				ledger.getVerdicts().add(verdict);
			}
			open.archive().getLedgers().add(ledger);
			GateCheck check = new ReleaseBook(open, Clock.systemUTC(), new KnownReleases(null)).ask(PackRequest.USUAL,
					Workers.inline());
			String page = ReleaseReport.html(open.archive(), null, check, open.digest(), List.of());
			assertTrue(page.contains(
					"<td>audit-high-1: 3 of 5 proposals looked at; the rest approved by R. Reviewer</td><td class=\"n\">2</td>"),
					page);
		}
	}

	@Test
	void needsNothingFromElsewhereAndRunsNothing() throws Exception {
		String page = page();
		assertFalse(page.contains("<script") || page.contains("<link") || page.contains("@import")
				|| page.contains("<img"));
		Matcher address = Pattern.compile("(?:src|href)=\"([^#\"][^\"]*)\"").matcher(page);
		assertFalse(address.find(), () -> address.group());
		assertTrue(page.contains("&lt;script&gt;alert(1)&lt;/script&gt; &amp; &quot;quay&quot;"));
		assertTrue(page.contains("default-src 'none'"));
	}

	/** Pictures that are files of their own use the same ids; in one page each must keep to its own. */
	@Test
	void givesThePicturesIdsThatDoNotClashAndMeetTheirReferences() throws Exception {
		String page = page();
		Set<String> ids = new HashSet<>();
		Matcher id = Pattern.compile("\\sid=[\"']([^\"']+)[\"']").matcher(page);
		while (id.find()) {
			assertTrue(ids.add(id.group(1)), "twice: " + id.group(1));
		}
		assertTrue(ids.size() > 2, ids::toString);
		Matcher use = Pattern.compile("url\\(#([^)]+)\\)|href=[\"']#([^\"']+)[\"']").matcher(page);
		int uses = 0;
		while (use.find()) {
			assertTrue(ids.contains(use.group(1) == null ? use.group(2) : use.group(1)), use.group());
			uses++;
		}
		assertTrue(uses > 0);
		assertEquals(2, page.split("<svg", -1).length - 1);
	}

	@Test
	void prefixesIdsInAttributesOnly() {
		assertEquals("<svg><g id=\"p1-a\" fill=\"url(#p1-b)\"/><use xlink:href=\"#p1-a\"/><text>id = 3</text></svg>",
				ReportPage.inlined(
						"<?xml version=\"1.0\"?><svg><g id=\"a\" fill=\"url(#b)\"/><use xlink:href=\"#a\"/><text>id = 3</text></svg>",
						"p1-"));
	}
}
