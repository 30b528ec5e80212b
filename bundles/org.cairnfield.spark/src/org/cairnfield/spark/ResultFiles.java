package org.cairnfield.spark;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.Path;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SaveMode;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import org.cairnfield.core.cluster.Clustering;
import org.cairnfield.core.cluster.Role;
import org.cairnfield.core.correlate.NoisePlacement;
import org.cairnfield.core.correlate.ProposalRule;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.exchange.IntakeException;
import org.cairnfield.exchange.ResultTable;

/** The results as tables: CSV with the columns, order and numbers of the batch command's, and Parquet. */
final class ResultFiles {

	private static final StructType SPLIT = new StructType().add("survey", DataTypes.StringType)
			.add("sample", DataTypes.StringType)
			.add("floor", DataTypes.IntegerType).add("x", DataTypes.DoubleType).add("y", DataTypes.DoubleType)
			.add("cluster", DataTypes.IntegerType)
			.add("role", DataTypes.StringType).add("clusterWithProposals", DataTypes.IntegerType)
			.add("site", DataTypes.StringType);
	private static final StructType PROPOSALS = new StructType().add("sample", DataTypes.StringType)
			.add("cluster", DataTypes.IntegerType)
			.add("strength", DataTypes.DoubleType).add("margin", DataTypes.DoubleType)
			.add("carrier", DataTypes.StringType)
			.add("runnerUp", DataTypes.IntegerType);
	private static final StructType BAD_ROWS = new StructType().add("survey", DataTypes.StringType)
			.add("line", DataTypes.LongType)
			.add("reason", DataTypes.StringType).add("record", DataTypes.StringType);

	private final SparkSession session;
	private final JavaSparkContext spark;
	private final SplitJob.Result result;
	private final ProposalRule rule;
	private final String folder;
	private final String[] names;

	/** @param folder by any path that Spark can write to */
	ResultFiles(SparkSession session, SplitJob.Result result, ProposalRule rule, String folder) {
		this.session = session;
		this.spark = JavaSparkContext.fromSparkContext(session.sparkContext());
		this.result = result;
		this.rule = rule;
		this.folder = folder;
		names = names();
	}

	private String[] names() {
		String[] found = new String[result.taking().size()];
		forSamples((survey, sample, id, name) -> found[id] = name);
		return found;
	}

	private interface Visitor<E extends Exception> {
		void visit(SurveyPart survey, int sample, int id, String name) throws E;
	}

	/** Samples of the map in the order of the surveys. */
	private <E extends Exception> void forSamples(Visitor<E> visitor) throws E {
		for (Iterator<SurveyPart> surveys = result.surveys().toLocalIterator(); surveys.hasNext();) {
			SurveyPart survey = surveys.next();
			for (int s = 0; s < survey.map().size(); s++) {
				int id = result.taking().id(survey.index(), s);
				if (id >= 0) {
					visitor.visit(survey, s, id, result.taking().name(survey.index(), s));
				}
			}
		}
	}

	/** All of them; those of an earlier run are replaced. */
	void write() throws JobException {
		splitMap();
		proposals();
		csv("measures.csv", Figures.COLUMNS, result.figures().stream().filter(f -> f.site() == null).map(Figures::row));
		List<String> columns = new ArrayList<>(List.of("site", "testSamples"));
		columns.addAll(Figures.COLUMNS);
		List<List<Object>> bySite = result.figures().stream().map(f -> {
			List<Object> row = new ArrayList<>(Arrays.asList(f.site(), f.tests()));
			row.addAll(f.row());
			return row;
		}).toList();
		csv("measures-by-site.csv", columns, bySite.stream().filter(row -> row.get(0) != null));
		StructType figures = new StructType();
		for (String column : columns) {
			figures = figures.add(column, column.equals("site") || column.equals("name") ? DataTypes.StringType
					: column.equals("testSamples") ? DataTypes.IntegerType : DataTypes.DoubleType);
		}
		parquet("measures.parquet", bySite.stream().map(row -> RowFactory.create(row.toArray())).toList(), figures);
		if (result.quarantined() > 0) {
			JavaRDD<SurveyPart> all = result.heldOut() ? result.surveys()
					: result.surveys().union(result.testSurveys());
			session.createDataFrame(all.flatMap(s -> s.quarantined().stream()
					.map(r -> RowFactory.create(s.file(), r.line(), r.reason(), r.record())).iterator()), BAD_ROWS)
					.write().mode(SaveMode.Overwrite).parquet(path("quarantine.parquet"));
		}
	}

	private void splitMap() throws JobException {
		int[] after = result.withProposals();
		Clustering split = result.split();
		List<List<?>> rows = new ArrayList<>();
		forSamples((survey, s, id, name) -> {
			RadioMap map = survey.map();
			rows.add(List.of(name, map.sites().get(map.site(s)), map.floor(s), map.x(s), map.y(s), split.label(id),
					split.role(id).toString(), after[id]));
		});
		csv("split-map.csv", List.of("sample", "site", "floor", "x", "y", "cluster", "role", "clusterWithProposals"),
				rows.stream());
		Broadcast<int[][]> labels = spark.broadcast(new int[][] { split.labels(),
				IntStream.range(0, split.size()).map(s -> split.role(s).ordinal()).toArray(),
				after });
		Broadcast<Taking> taking = spark.broadcast(result.taking());
		session.createDataFrame(result.surveys().flatMap(s -> rows(s, taking.value(), labels.value()).iterator()),
				SPLIT)
				.write().mode(SaveMode.Overwrite).partitionBy("site").parquet(path("split-map.parquet"));
	}

	private static List<Row> rows(SurveyPart survey, Taking taking, int[][] labels) {
		RadioMap map = survey.map();
		return IntStream.range(0, map.size()).filter(s -> taking.id(survey.index(), s) >= 0).mapToObj(s -> {
			int id = taking.id(survey.index(), s);
			return RowFactory.create(survey.name(), taking.name(survey.index(), s), map.floor(s), map.x(s), map.y(s),
					labels[0][id],
					Role.values()[labels[1][id]].toString(), labels[2][id], map.sites().get(map.site(s)));
		}).toList();
	}

	private void proposals() throws JobException {
		NoisePlacement[] placed = new NoisePlacement[names.length];
		result.placements().forEach(p -> placed[p.sample()] = p);
		List<List<Object>> rows = new ArrayList<>();
		forSamples((survey, s, id, name) -> {
			if (result.split().isNoise(id)) {
				rows.add(row(name, placed[id]));
			}
		});
		csv("proposals.csv", Arrays.asList(PROPOSALS.fieldNames()), rows.stream());
		parquet("proposals.parquet", rows.stream().map(row -> RowFactory.create(row.toArray())).toList(), PROPOSALS);
	}

	private List<Object> row(String name, NoisePlacement p) {
		if (p == null) {
			return Arrays.asList(name, null, null, null, null, null);
		}
		boolean made = rule.proposes(p) && p.cluster() != Clustering.NOISE;
		return Arrays.asList(name, made ? p.cluster() : null, p.strength(), p.margin(),
				p.carrier() < 0 ? null : names[p.carrier()],
				p.runnerUp() == Clustering.NOISE ? null : p.runnerUp());
	}

	private String path(String name) {
		return folder + "/" + name;
	}

	private void parquet(String name, List<Row> rows, StructType schema) {
		session.createDataFrame(spark.parallelize(new ArrayList<>(rows), 1), schema).write().mode(SaveMode.Overwrite)
				.parquet(path(name));
	}

	/** As one file, for people; written here and then moved to where the folder is. */
	private void csv(String name, List<String> columns, Stream<? extends List<?>> rows) throws JobException {
		Path target = new Path(path(name));
		try {
			java.nio.file.Path local = Files.createTempDirectory("cairnfield").resolve(name);
			ResultTable.write(local, columns, rows.map(row -> (List<?>) row));
			FileSystem system = target.getFileSystem(spark.hadoopConfiguration());
			system.mkdirs(target.getParent());
			system.copyFromLocalFile(true, true, new Path(local.toUri()), target);
			Files.delete(local.getParent());
		} catch (IOException | IntakeException e) {
			throw new JobException(JobException.INPUT, target + " cannot be written: " + e.getMessage());
		}
	}
}
