package org.cairnfield.archive.internal.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;

import org.cairnfield.core.cluster.Role;
import org.cairnfield.model.Cluster;
import org.cairnfield.model.Decision;
import org.cairnfield.model.Ledger;
import org.cairnfield.model.ModelFactory;
import org.cairnfield.model.Round;
import org.cairnfield.model.Split;
import org.cairnfield.model.Verdict;
import org.cairnfield.model.values.Labels;
import org.cairnfield.model.values.Proposal;
import org.cairnfield.model.values.Proposals;
import org.cairnfield.model.values.SampleKey;
import org.cairnfield.model.values.Scope;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SplitAndLedgerTextTest {

	private static final String[] SPLIT = { "cairnfield split 1", "parameter\tid\tth-3", "parameter\tscope\tsite/th/3",
			"parameter\trepresentation\tPOSITIVE", "parameter\tdistance\tCITY_BLOCK", "parameter\tepsilon\t110.5",
			"parameter\tminPts\t4", "parameter\tseed\t-7", "cluster\t0\t2",
			"sample\tcluster\trole\tproposed\tstrength\tmargin\tcarrier\tnearest", "spring/S-1\t0\tcore",
			"spring/S-2\t0\tborder",
			"spring/S-3\tnoise\tnoise\t0\t0.94\t0.11\tspring/S-1\t0",
			"spring/S-4\tnoise\tnoise\t0\t-0.5\t-\tspring/S-2\tnoise" };

	private static final String[] LEDGER = { "cairnfield ledger 1", "ledger\tmq",
			"id\tsplit\tsample\tcluster\tdecision\treason\ttext\tperson\ttime\tsupersedes",
			"v-1\tth-3\tspring/S-3\t0\tapprove\t-\t-\tM.Q.\t2031-05-01T10:00:00Z\t-",
			"v-2\tth-3\tspring/S-3\t0\treject\tfar\ttwo\\nlines\tM.Q.\t2031-05-01T10:00:00.000000001Z\tv-1",
			"v-3\t-\t-\t0\tdefer\t\\u002d\t\t-\t-\t-" };

	private final PartReport report = new PartReport("f");

	private static Split split() {
		Split split = ModelFactory.eINSTANCE.createSplit();
		split.setId("th-3");
		split.setScope(Scope.floor("th", 3));
		split.setRepresentation("POSITIVE");
		split.setDistance("CITY_BLOCK");
		split.setEpsilon(110.5);
		split.setMinPts(4);
		split.setSeed(-7);
		Cluster cluster = ModelFactory.eINSTANCE.createCluster();
		cluster.setSize(2);
		split.getClusters().add(cluster);
		split.setLabels(Labels.builder().add(key(3), Labels.NOISE, Role.NOISE).add(key(1), 0, Role.CORE)
				.add(key(2), 0, Role.BORDER)
				.add(key(4), Labels.NOISE, Role.NOISE).build());
		split.setProposals(Proposals.of(List.of(new Proposal(key(4), 0, -0.5, Double.NaN, key(2), Labels.NOISE),
				new Proposal(key(3), 0, 0.94, 0.11, key(1), 0))));
		return split;
	}

	private static SampleKey key(int number) {
		return new SampleKey("spring", "S-" + number);
	}

	private Split readSplit(int records, String... lines) throws IOException {
		return SplitText.read(new ByteArrayInputStream(Lines.sealed(records, lines)), Migrations.NONE, report);
	}

	private Ledger readLedger(int records, String... lines) throws IOException {
		return LedgerText.read(new ByteArrayInputStream(Lines.sealed(records, lines)), Migrations.NONE, report);
	}

	@Test
	void writesASplit() throws IOException {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		SplitText.write(split(), out);
		assertEquals(new String(Lines.sealed(4, SPLIT), StandardCharsets.UTF_8), out.toString(StandardCharsets.UTF_8));
	}

	@Test
	void readsASplit() throws IOException {
		Split read = readSplit(4, SPLIT);
		assertEquals(List.of(), report.damages());
		Split expected = split();
		assertEquals(expected.getLabels(), read.getLabels());
		assertEquals(expected.getProposals(), read.getProposals());
		assertEquals(110.5, read.getEpsilon());
		assertEquals(-7, read.getSeed());
		assertEquals(2, read.getClusters().get(0).getSize());
	}

	@ParameterizedTest
	@ValueSource(strings = { "spring/S-5", "spring/S-5\t0", "spring/S-5\t0\tnoise", "spring/S-5\tnoise\tcore",
			"spring/S-5\t-1\tcore",
			"spring/S-5\t0\tking", "S-5\t0\tcore", "spring/S-5\t-\t-", "spring/S-1\t0\tcore",
			"spring/S-5\tnoise\tnoise\t0\t1.5\t0.1\tspring/S-1\t0",
			"spring/S-5\tnoise\tnoise\t0\t0.5\t-0.1\tspring/S-1\t0",
			"spring/S-5\tnoise\tnoise\t-\t-\t-\t-\t-", "spring/S-5\tnoise\tnoise\t0\t0.5\t0.1\tS-1\t0" })
	void tellsTheLineOfASplitThatIsNone(String line) throws IOException {
		String[] lines = Arrays.copyOf(SPLIT, SPLIT.length + 1);
		lines[SPLIT.length] = line;
		Split read = readSplit(5, lines);
		assertEquals(1, report.damages().size(), report.damages()::toString);
		assertEquals(15, report.damages().get(0).line());
		assertEquals(split().getLabels(), read.getLabels());
	}

	@ParameterizedTest
	@ValueSource(strings = { "parameter\tepsilon\tmany", "parameter\tcolour\tred", "cluster\t0\t2\t3", "cluster\t-\t2",
			"remark" })
	void tellsTheHeadOfASplitThatIsNone(String line) throws IOException {
		String[] lines = SPLIT.clone();
		lines[5] = line;
		readSplit(4, lines);
		assertEquals(6, report.damages().get(0).line());
	}

	@Test
	void writesALedgerInTheOrderOfItsVerdicts() throws IOException {
		Ledger ledger = ModelFactory.eINSTANCE.createLedger();
		ledger.setId("mq");
		ledger.getVerdicts()
				.add(verdict("v-1", Decision.APPROVE, null, null, Instant.parse("2031-05-01T10:00:00Z"), null));
		ledger.getVerdicts().add(verdict("v-2", Decision.REJECT, "far", "two\nlines",
				Instant.parse("2031-05-01T10:00:00.000000001Z"), "v-1"));
		Verdict bare = ModelFactory.eINSTANCE.createVerdict();
		bare.setId("v-3");
		bare.setDecision(Decision.DEFER);
		bare.setReasonCode("-");
		bare.setText("");
		ledger.getVerdicts().add(bare);
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		LedgerText.write(ledger, out);
		assertEquals(new String(Lines.sealed(3, LEDGER), StandardCharsets.UTF_8), out.toString(StandardCharsets.UTF_8));
	}

	private static Verdict verdict(String id, Decision decision, String code, String text, Instant time,
			String supersedes) {
		Verdict verdict = ModelFactory.eINSTANCE.createVerdict();
		verdict.setId(id);
		verdict.setSplit("th-3");
		verdict.setSample(key(3));
		verdict.setDecision(decision);
		verdict.setReasonCode(code);
		verdict.setText(text);
		verdict.setPerson("M.Q.");
		verdict.setTime(time);
		verdict.setSupersedes(supersedes);
		return verdict;
	}

	@Test
	void readsALedger() throws IOException {
		Ledger read = readLedger(3, LEDGER);
		assertEquals(List.of(), report.damages());
		assertEquals("mq", read.getId());
		assertEquals("two\nlines", read.getVerdicts().get(1).getText());
		assertEquals("v-1", read.getVerdicts().get(1).getSupersedes());
		assertEquals("-", read.getVerdicts().get(2).getReasonCode());
		assertEquals("", read.getVerdicts().get(2).getText());
		assertEquals(null, read.getVerdicts().get(2).getPerson());
	}

	private static final String[] MORE = { "cairnfield ledger 1", "ledger\tmq",
			LEDGER[2] + "\tround\tcontent\tevidence\tbatch",
			LEDGER[3] + "\tfirst\t-\t-\t-", LEDGER[4] + "\tsecond\t00000000000000aa\t00000000000000bb\taudit-close-1" };

	@Test
	void writesMoreColumnsWhereAVerdictSaysMore() throws IOException {
		Ledger ledger = ModelFactory.eINSTANCE.createLedger();
		ledger.setId("mq");
		ledger.getVerdicts()
				.add(verdict("v-1", Decision.APPROVE, null, null, Instant.parse("2031-05-01T10:00:00Z"), null));
		Verdict second = verdict("v-2", Decision.REJECT, "far", "two\nlines",
				Instant.parse("2031-05-01T10:00:00.000000001Z"), "v-1");
		second.setRound(Round.SECOND);
		second.setSampleContent("00000000000000aa");
		second.setEvidence("00000000000000bb");
		second.setBatch("audit-close-1");
		ledger.getVerdicts().add(second);
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		LedgerText.write(ledger, out);
		assertEquals(new String(Lines.sealed(2, MORE), StandardCharsets.UTF_8), out.toString(StandardCharsets.UTF_8));
		Verdict read = readLedger(2, MORE).getVerdicts().get(1);
		assertEquals(List.of(), report.damages());
		assertEquals(Round.SECOND, read.getRound());
		assertEquals("00000000000000aa", read.getSampleContent());
		assertEquals("00000000000000bb", read.getEvidence());
		assertEquals("audit-close-1", read.getBatch());
	}

	private static final String[] ALL = { "cairnfield ledger 1", "ledger\tmq", MORE[2] + "\tenteredBy",
			LEDGER[3] + "\tfirst\t-\t-\t-\t-", LEDGER[4] + "\tfirst\t-\t-\t-\tA. Clerk" };

	@Test
	void writesWhoEnteredAVerdictInAColumnOfItsOwnAndOnlyWhereSomebodyDid() throws IOException {
		Ledger ledger = ModelFactory.eINSTANCE.createLedger();
		ledger.setId("mq");
		ledger.getVerdicts()
				.add(verdict("v-1", Decision.APPROVE, null, null, Instant.parse("2031-05-01T10:00:00Z"), null));
		Verdict entered = verdict("v-2", Decision.REJECT, "far", "two\nlines",
				Instant.parse("2031-05-01T10:00:00.000000001Z"), "v-1");
		entered.setEnteredBy("A. Clerk");
		ledger.getVerdicts().add(entered);
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		LedgerText.write(ledger, out);
		byte[] expected = Lines.sealed(2, ALL);
		assertEquals(new String(expected, StandardCharsets.UTF_8), out.toString(StandardCharsets.UTF_8));
		Ledger read = readLedger(2, ALL);
		assertEquals(List.of(), report.damages());
		assertEquals(Arrays.asList(null, "A. Clerk"), read.getVerdicts().stream().map(Verdict::getEnteredBy).toList());
		assertEquals(LedgerLines.of(Lines.sealed(1, LEDGER[0], LEDGER[1], LEDGER[2], LEDGER[3])).get(0),
				LedgerLines.of(expected).get(0),
				"the column of one line makes another line a new one");
		assertEquals(List.of("", "A. Clerk"), LedgerLines.of(expected).stream().map(LedgerLines::enteredBy).toList());
		assertEquals(List.of("M.Q.", "M.Q."), LedgerLines.of(expected).stream().map(LedgerLines::person).toList());
	}

	@Test
	void keepsWhereASampleGoesInTheColumnsThatLedgersAlwaysHad() throws IOException {
		Ledger ledger = ModelFactory.eINSTANCE.createLedger();
		ledger.setId("mq");
		for (Decision decision : Decision.values()) {
			Verdict verdict = verdict("v-" + decision, decision, "far", null, Instant.parse("2031-05-01T10:00:00Z"),
					null);
			verdict.setCluster(7);
			ledger.getVerdicts().add(verdict);
		}
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		LedgerText.write(ledger, out);
		String[] lines = out.toString(StandardCharsets.UTF_8).split("\n");
		assertEquals(LEDGER[2], lines[2]);
		assertEquals("v-move\tth-3\tspring/S-3\t7\tmove\tfar\t-\tM.Q.\t2031-05-01T10:00:00Z\t-",
				lines[3 + Decision.MOVE.ordinal()]);
		Ledger read = LedgerText.read(new ByteArrayInputStream(out.toByteArray()), Migrations.NONE, report);
		assertEquals(List.of(), report.damages());
		assertEquals(List.of(Decision.values()), read.getVerdicts().stream().map(Verdict::getDecision).toList());
	}

	@Test
	void tellsTheLineOfARoundThatIsNone() throws IOException {
		String[] lines = MORE.clone();
		lines[4] = lines[4].replace("\tsecond\t", "\tthird\t");
		readLedger(2, lines);
		assertEquals(5, report.damages().get(0).line(), report.damages()::toString);
	}

	@Test
	void writesTheRuleOfProposalsOnlyWhereItIsNotTheUsualOne() throws IOException {
		Split split = split();
		split.setGate(0.2);
		split.setThreshold(-0.5);
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		SplitText.write(split, out);
		String text = out.toString(StandardCharsets.UTF_8);
		assertTrue(text.contains("parameter\tgate\t0.2\nparameter\tthreshold\t-0.5\n"), text);
		Split read = SplitText.read(new ByteArrayInputStream(out.toByteArray()), Migrations.NONE, report);
		assertEquals(List.of(), report.damages());
		assertEquals(0.2, read.getGate());
		assertEquals(-0.5, read.getThreshold());
	}

	@ParameterizedTest
	@ValueSource(strings = { "v-1\tth-3\tspring/S-3\t0\tapprove\t-\t-\tM.Q.\t-\t-",
			"v-4\tth-3\tspring/S-3\t0\tmaybe\t-\t-\tM.Q.\t-\t-",
			"v-4\tth-3\tspring\t0\tdefer\t-\t-\tM.Q.\t-\t-", "v-4\tth-3\tspring/S-3\tx\tdefer\t-\t-\tM.Q.\t-\t-",
			"v-4\tth-3\tspring/S-3\t0\tdefer\t-\t-\tM.Q.\tnoon\t-", "v-4\tth-3" })
	void tellsTheLineOfALedgerThatIsNone(String line) throws IOException {
		String[] lines = Arrays.copyOf(LEDGER, LEDGER.length + 1);
		lines[LEDGER.length] = line;
		Ledger read = readLedger(4, lines);
		assertEquals(7, report.damages().get(0).line(), report.damages()::toString);
		assertEquals(3, read.getVerdicts().size());
	}

	@Test
	void tellsOfALedgerWithoutAName() throws IOException {
		readLedger(0, "cairnfield ledger 1", LEDGER[2]);
		assertTrue(report.damages().get(0).reason().contains("name"), report.damages()::toString);
	}
}
