package org.cairnfield.spark;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.storage.StorageLevel;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.correlate.NoisePlacement;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.match.Search;

/** The whole job: surveys in; split map, proposals, figures and packs out. */
final class SplitJob {

	/**
	 * What is asked for.
	 *
	 * @param map     paths of survey files or tables
	 * @param test    likewise; empty: a fifth of the samples is held out
	 * @param mapping how to read files, as a mapping file has it
	 * @param minPts  the sample itself counted
	 * @param largest samples of a component in one task
	 * @param packs   whether packs are made
	 */
	record Request(List<String> map, List<String> test, String mapping, double epsilon, int minPts, Search search,
			ProposalRule rule, long seed,
			int largest, boolean packs) {
	}

	/**
	 * What came of it.
	 *
	 * @param surveys       of the map, with what is left out
	 * @param testSurveys   the same where samples are held out
	 * @param taking        which samples are in the map
	 * @param tests         how many test samples
	 * @param withProposals cluster of each sample as if all proposals were approved
	 * @param quarantined   rows that were not taken in
	 */
	record Result(JavaRDD<SurveyPart> surveys, JavaRDD<SurveyPart> testSurveys, Taking taking, int tests,
			boolean heldOut, int components,
			Clustering split, List<NoisePlacement> placements, int[] withProposals, List<Figures> figures,
			List<Packs.Written> packs, long quarantined) {
	}

	private final SparkSession session;
	private final JavaSparkContext spark;
	private final Request request;
	private final Steps steps;

	/** Hears of each step as it begins. */
	interface Steps {
		void begin(String step);
	}

	SplitJob(SparkSession session, Request request, Steps steps) {
		this.session = session;
		this.spark = JavaSparkContext.fromSparkContext(session.sparkContext());
		this.request = request;
		this.steps = steps;
	}

	/** @param packFolder where packs go, if any are wanted */
	Result run(String packFolder) throws JobException {
		steps.begin("reading surveys");
		JavaRDD<SurveyPart> surveys = read(request.map);
		List<Taking.Outline> outlines = Taking.outlines(surveys);
		JavaRDD<SurveyPart> testSurveys = request.test.isEmpty() ? surveys : read(request.test);
		List<Taking.Outline> testOutlines = request.test.isEmpty() ? outlines : Taking.outlines(testSurveys);
		boolean[][] heldOut = request.test.isEmpty() ? Taking.heldOut(outlines, request.seed) : null;
		Taking taking = Taking.map(outlines, heldOut);
		Taking tests = Taking.tests(testOutlines, heldOut, taking);
		if (taking.size() < 2) {
			throw new JobException(JobException.NOT_ENOUGH,
					"a map needs two samples at least, and " + taking.size() + " can be used: "
							+ taking.setAside() + " heard too few access points, " + tests.size() + " test");
		}
		SpreadMap map = spread(surveys, taking);
		steps.begin("clustering " + map.size() + " samples");
		Clustering split = SparkDbscan.cluster(spark, map, request.epsilon, request.minPts, request.largest);
		steps.begin("correlating " + split.noise() + " noise samples");
		List<NoisePlacement> placements = SparkProposals.place(spark, map, split, request.rule);
		int[] withProposals = split.labels();
		placements.stream().filter(request.rule::proposes).filter(p -> p.cluster() != Clustering.NOISE)
				.forEach(p -> withProposals[p.sample()] = p.cluster());
		steps.begin("matching " + tests.size() + " test samples");
		Set<String> accessPoints = taking.known(surveys, spark.broadcast(taking));
		accessPoints.addAll(tests.known(testSurveys, spark.broadcast(tests)));
		List<Figures> figures = figures(map, split, withProposals, spread(testSurveys, tests),
				Taking.inOrder(accessPoints));
		List<Packs.Written> packs = List.of();
		if (request.packs) {
			steps.begin("packing");
			packs = Packs.write(spark, map, withProposals, request.search, request.seed, packFolder);
		}
		return new Result(surveys, testSurveys, taking, tests.size(), heldOut != null, map.earshot().costs().size(),
				split, placements,
				withProposals, figures, packs,
				quarantined(surveys) + (request.test.isEmpty() ? 0 : quarantined(testSurveys)));
	}

	private JavaRDD<SurveyPart> read(List<String> paths) throws JobException {
		List<String> files = paths.stream().filter(p -> !SurveyTables.isTable(p)).toList();
		JavaRDD<SurveyPart> all = files.isEmpty() ? spark.emptyRDD() : SurveyFiles.read(spark, files, request.mapping);
		all = all.persist(StorageLevel.MEMORY_AND_DISK());
		int count = (int) all.count();
		for (String path : paths) {
			if (SurveyTables.isTable(path)) {
				JavaRDD<SurveyPart> table = SurveyTables.read(session, path, count)
						.persist(StorageLevel.MEMORY_AND_DISK());
				count += (int) table.count();
				all = all.union(table);
			}
		}
		List<String> problems = all.filter(s -> s.problem() != null).map(SurveyPart::problem).collect();
		if (!problems.isEmpty()) {
			throw new JobException(JobException.INPUT, String.join(System.lineSeparator(), problems));
		}
		return all;
	}

	private static long quarantined(JavaRDD<SurveyPart> surveys) {
		return surveys.map(s -> s.quarantined().size() + s.omitted()).fold(0L, Long::sum);
	}

	private SpreadMap spread(JavaRDD<SurveyPart> surveys, Taking taking) {
		Broadcast<Taking> known = spark.broadcast(taking);
		JavaRDD<Fingerprint> samples = surveys.flatMap(s -> known.value().samples(s).iterator());
		int parts = Math.max(spark.defaultParallelism(),
				Math.min(surveys.getNumPartitions(), 3 * spark.defaultParallelism()));
		return SpreadMap.of(samples.repartition(parts).persist(StorageLevel.MEMORY_AND_DISK()), taking.size(),
				taking.sites(), taking.accessPoints());
	}

	private List<Figures> figures(SpreadMap map, Clustering split, int[] withProposals, SpreadMap tests,
			List<String> accessPoints) {
		List<Fingerprint> all = new ArrayList<>(map.samples().collect());
		all.sort(Comparator.comparingInt(Fingerprint::id));
		RadioMap whole = Fingerprint.map(all, map.sites()::get, map.accessPoints()::get, accessPoints);
		return Figures.of(spark, new Matching(whole, split.labels(), withProposals, request.search, request.seed),
				whole, tests);
	}
}
