package org.cairnfield.spark;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SaveMode;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.functions;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import scala.Tuple2;

/**
 * Surveys as Parquet, partitioned by site. A row is a sample: {@code site}, {@code floor}, {@code x}, {@code y} in metres, {@code accessPoints}
 * and {@code levels} in dBm as lists of equal length; {@code survey} (else one a site), {@code device}, {@code sample} and {@code position},
 * by which the samples are ordered (else by survey and sample).
 */
final class SurveyTables {

	private static final String POSITION = "position";
	private static final int MOST_PARTS = 200;
	private static final StructType SCHEMA = new StructType().add("survey", DataTypes.StringType)
			.add("sample", DataTypes.StringType)
			.add(POSITION, DataTypes.LongType).add("floor", DataTypes.IntegerType).add("x", DataTypes.DoubleType)
			.add("y", DataTypes.DoubleType)
			.add("device", DataTypes.StringType).add("accessPoints", DataTypes.createArrayType(DataTypes.StringType))
			.add("levels", DataTypes.createArrayType(DataTypes.IntegerType)).add("site", DataTypes.StringType);

	/** A row on its way to its survey. */
	private record Sample(String name, Long position, String site, Integer floor, Double x, Double y, String device,
			List<String> accessPoints,
			List<Integer> levels) implements Serializable {
	}

	private SurveyTables() {
	}

	/** Whether a path is taken for such a table: its name ends in {@code .parquet}. */
	static boolean isTable(String path) {
		return path.replaceAll("/+$", "").endsWith(".parquet");
	}

	/**
	 * @param first number of the first survey
	 * @throws JobException where a column is missing
	 */
	static JavaRDD<SurveyPart> read(SparkSession session, String path, int first) throws JobException {
		Dataset<Row> table = session.read().parquet(path);
		List<String> columns = Arrays.asList(table.columns());
		for (String needed : List.of("site", "floor", "x", "y", "accessPoints", "levels")) {
			if (!columns.contains(needed)) {
				throw new JobException(JobException.INPUT,
						path + " has no column '" + needed + "'; it has " + String.join(", ", columns));
			}
		}
		for (String optional : List.of("survey", "sample", "device", POSITION)) {
			table = columns.contains(optional) ? table : table.withColumn(optional, functions.lit(null));
		}
		Dataset<Row> rows = table.select(
				functions.coalesce(functions.col("survey"), functions.col("site")).cast("string"),
				functions.col("sample").cast("string"), functions.col(POSITION).cast("long"),
				functions.col("site").cast("string"),
				functions.col("floor").cast("int"), functions.col("x").cast("double"),
				functions.col("y").cast("double"),
				functions.col("device").cast("string"), functions.col("accessPoints"),
				functions.col("levels").cast("array<int>"));
		Map<String, Integer> index = surveys(rows, first);
		int parts = Math.max(1, Math.min(index.size(), MOST_PARTS));
		return rows.javaRDD().mapToPair(r -> new Tuple2<>(name(r), sample(r))).groupByKey(parts)
				.map(group -> part(index.get(group._1), group._1, group._2)).sortBy(s -> s.index(), true, parts);
	}

	private static String name(Row row) {
		return row.isNullAt(0) ? "" : row.getString(0);
	}

	/** Surveys in the order of their first positions, then of their names. */
	private static Map<String, Integer> surveys(Dataset<Row> rows, int first) {
		List<Tuple2<String, Long>> found = new ArrayList<>(rows.javaRDD()
				.mapToPair(r -> new Tuple2<>(name(r), r.isNullAt(2) ? Long.MAX_VALUE : r.getLong(2)))
				.reduceByKey(Math::min).collect());
		found.sort(Comparator.comparing((Tuple2<String, Long> s) -> s._2).thenComparing(s -> s._1));
		Map<String, Integer> index = new HashMap<>();
		found.forEach(s -> index.put(s._1, first + index.size()));
		return index;
	}

	private static Sample sample(Row r) {
		return new Sample(r.getString(1), r.isNullAt(2) ? null : r.getLong(2), r.getString(3),
				r.isNullAt(4) ? null : r.getInt(4),
				r.isNullAt(5) ? null : r.getDouble(5), r.isNullAt(6) ? null : r.getDouble(6), r.getString(7),
				r.isNullAt(8) ? null : r.getList(8),
				r.isNullAt(9) ? null : r.getList(9));
	}

	private static SurveyPart part(int index, String name, Iterable<Sample> found) {
		List<Sample> samples = new ArrayList<>();
		found.forEach(samples::add);
		samples.sort(Comparator.comparing(Sample::position, Comparator.nullsLast(Comparator.naturalOrder()))
				.thenComparing(Sample::name, Comparator.nullsLast(Comparator.naturalOrder())));
		RadioMapBuilder builder = new RadioMapBuilder();
		List<String> ids = new ArrayList<>();
		List<SurveyPart.BadRow> bad = new ArrayList<>();
		for (Sample s : samples) {
			String fault = fault(s);
			if (fault != null) {
				bad.add(new SurveyPart.BadRow(0, fault, s.toString()));
				continue;
			}
			builder.sample(s.site, s.floor, s.x, s.y);
			if (s.device != null) {
				builder.device(s.device);
			}
			for (int k = 0; k < s.levels.size(); k++) {
				builder.reading(s.accessPoints.get(k), s.levels.get(k));
			}
			ids.add(s.name);
		}
		List<String> names = ids.contains(null) || new HashSet<>(ids).size() < ids.size()
				? IntStream.rangeClosed(1, ids.size()).mapToObj(Integer::toString).toList()
				: ids;
		return new SurveyPart(index, name, name, builder.build(), names, bad, 0, null);
	}

	/** Why a row cannot be taken in; null where it can. */
	private static String fault(Sample s) {
		if (s.site == null || s.floor == null || s.floor != s.floor.shortValue()) {
			return "no site or no floor";
		}
		if (s.x == null || s.y == null || !Double.isFinite(s.x) || !Double.isFinite(s.y)) {
			return "no position";
		}
		if (s.accessPoints == null || s.levels == null || s.accessPoints.size() != s.levels.size()
				|| s.accessPoints.contains(null)) {
			return "not one level for each access point";
		}
		if (new HashSet<>(s.accessPoints).size() < s.accessPoints.size()) {
			return "an access point is heard twice";
		}
		return s.levels.stream()
				.allMatch(l -> l != null && l >= RadioMap.LOWEST_RSSI_DBM && l <= RadioMap.HIGHEST_RSSI_DBM) ? null
						: "a level outside " + RadioMap.LOWEST_RSSI_DBM + " … " + RadioMap.HIGHEST_RSSI_DBM + " dBm";
	}

	/** Writes surveys so that {@link #read} takes the same samples in, in the same order. */
	static void write(SparkSession session, JavaRDD<SurveyPart> surveys, String path) {
		session.createDataFrame(
				surveys.flatMap(s -> IntStream.range(0, s.map().size()).mapToObj(i -> row(s, i)).iterator()), SCHEMA)
				.write().mode(SaveMode.Overwrite).partitionBy("site").parquet(path);
	}

	private static Row row(SurveyPart survey, int sample) {
		RadioMap map = survey.map();
		List<String> accessPoints = new ArrayList<>();
		List<Integer> levels = new ArrayList<>();
		for (int k = map.firstReading(sample); k < map.endReading(sample); k++) {
			accessPoints.add(map.accessPoints().get(map.accessPoint(k)));
			levels.add(map.rssiDbm(k));
		}
		return RowFactory.create(survey.name(), survey.ids().get(sample), ((long) survey.index() << 32) + sample,
				map.floor(sample), map.x(sample),
				map.y(sample), map.device(sample) == RadioMap.NO_DEVICE ? null : map.devices().get(map.device(sample)),
				accessPoints.toArray(String[]::new), levels.toArray(Integer[]::new), map.sites().get(map.site(sample)));
	}
}
