package org.cairnfield.curation.release;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;

import org.cairnfield.core.match.Search;
import org.cairnfield.core.match.Voting;
import org.cairnfield.exchange.pack.PackSettings;

/** Manifests as JSON (RFC 8259), a value a line, in a fixed order. */
final class ManifestJson {

	private ManifestJson() {
	}

	static String write(ReleaseManifest m) {
		StringWriter text = new StringWriter();
		try (JsonWriter json = new JsonWriter(text)) {
			json.setIndent(" ");
			json.beginObject().name("format").value(ReleaseManifest.FORMAT).name("version").value(m.version());
			json.name("archive").value(m.archive()).name("digest").value(m.digest()).name("previous")
					.value(m.previous());
			list(json, "bump", m.bump());
			json.name("counts").beginObject();
			for (Map.Entry<String, Long> count : m.counts().entrySet()) {
				json.name(count.getKey()).value(count.getValue());
			}
			json.endObject();
			list(json, "splits", m.splits());
			PackSettings s = m.settings();
			json.name("pack").beginObject().name("levelStepDb").value(s.levelStepDb()).name("search")
					.value(s.search().code()).endObject();
			json.name("files").beginObject();
			for (Map.Entry<String, String> file : new TreeMap<>(m.files()).entrySet()) {
				json.name(file.getKey()).value(file.getValue());
			}
			json.endObject().name("gates").beginArray();
			for (ReleaseManifest.AskedGate g : m.gates()) {
				json.beginObject().name("gate").value(g.gate()).name("title").value(g.title()).name("figure")
						.value(g.figure());
				json.name("bound").value(g.bound()).name("met").value(g.met()).name("evidence").value(g.evidence());
				json.name("overruledBy").value(g.overruledBy()).name("reason").value(g.reason()).endObject();
			}
			json.endArray().name("gateSet").value(m.gateSet()).name("measures").beginArray();
			for (ReleaseManifest.Measured w : m.measures()) {
				measured(json, w);
			}
			json.endArray();
			list(json, "changes", m.changes());
			list(json, "ages", m.ages());
			list(json, "rules", m.rules());
			json.name("notes").value(m.notes()).name("preparedBy").value(m.preparedBy()).name("preparedAt")
					.value(m.preparedAt());
			json.name("signedBy").value(m.signedBy()).name("signedAt").value(m.signedAt()).endObject();
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
		return text.append("\n").toString();
	}

	private static void list(JsonWriter json, String name, List<String> lines) throws IOException {
		json.name(name).beginArray();
		for (String line : lines) {
			json.value(line);
		}
		json.endArray();
	}

	private static void measured(JsonWriter json, ReleaseManifest.Measured w) throws IOException {
		json.beginObject().name("name").value(w.name()).name("how").value(w.how()).name("n").value(w.n());
		number(json, "meanMetres", w.meanMetres());
		number(json, "meanLowMetres", w.meanLowMetres());
		number(json, "meanHighMetres", w.meanHighMetres());
		number(json, "medianMetres", w.medianMetres());
		number(json, "p75Metres", w.p75Metres());
		number(json, "p95Metres", w.p95Metres());
		number(json, "rightFloorShare", w.rightFloorShare());
		number(json, "comparisons", w.comparisons());
		json.endObject();
	}

	/** JSON knows no NaN. */
	private static void number(JsonWriter json, String name, double value) throws IOException {
		json.name(name);
		if (Double.isFinite(value)) {
			json.value(value);
		} else {
			json.nullValue();
		}
	}

	/** @throws IllegalArgumentException for a text that is no manifest, or of a version of the format that is not known here */
	static ReleaseManifest read(String text) {
		try {
			JsonObject o = JsonParser.parseString(text).getAsJsonObject();
			if (!ReleaseManifest.FORMAT.equals(string(o, "format"))) {
				throw new IllegalArgumentException(
						"the format is '" + string(o, "format") + "' and not '" + ReleaseManifest.FORMAT + "'");
			}
			Map<String, Long> counts = new LinkedHashMap<>();
			o.getAsJsonObject("counts").entrySet().forEach(e -> counts.put(e.getKey(), e.getValue().getAsLong()));
			Map<String, String> files = new TreeMap<>();
			o.getAsJsonObject("files").entrySet().forEach(e -> files.put(e.getKey(), e.getValue().getAsString()));
			JsonObject pack = o.getAsJsonObject("pack");
			PackSettings settings = new PackSettings(pack.get("levelStepDb").getAsInt(), search(pack));
			return new ReleaseManifest(string(o, "version"), string(o, "archive"), string(o, "digest"),
					string(o, "previous"),
					strings(o, "bump"), counts, strings(o, "splits"), settings, files,
					all(o.getAsJsonArray("gates"), ManifestJson::gate),
					string(o, "gateSet"), all(o.getAsJsonArray("measures"), ManifestJson::measured),
					strings(o, "changes"), later(o, "ages"),
					later(o, "rules"), string(o, "notes"), string(o, "preparedBy"), string(o, "preparedAt"),
					string(o, "signedBy"), string(o, "signedAt"));
		} catch (JsonParseException | IllegalStateException | NullPointerException | UnsupportedOperationException
				| ClassCastException | NumberFormatException e) {
			throw new IllegalArgumentException("no manifest of a release: " + e.getMessage(), e);
		}
	}

	/** Manifests that were written before it was told have none. */
	private static List<String> later(JsonObject o, String name) {
		return o.has(name) ? strings(o, name) : List.of();
	}

	/** Manifests that were written before a split had a search name its parts. */
	private static Search search(JsonObject pack) {
		return pack.has("search") ? Search.parse(string(pack, "search"))
				: new Search(false, 0, pack.get("cellProbes").getAsInt(), pack.get("relative").getAsBoolean(),
						new Voting(pack.get("k").getAsInt(), pack.get("weighted").getAsBoolean()));
	}

	private static ReleaseManifest.AskedGate gate(JsonObject o) {
		return new ReleaseManifest.AskedGate(string(o, "gate"), string(o, "title"), string(o, "figure"),
				string(o, "bound"),
				o.get("met").getAsBoolean(), string(o, "evidence"), string(o, "overruledBy"), string(o, "reason"));
	}

	private static ReleaseManifest.Measured measured(JsonObject o) {
		return new ReleaseManifest.Measured(string(o, "name"), string(o, "how"), o.get("n").getAsInt(),
				number(o, "meanMetres"),
				number(o, "meanLowMetres"), number(o, "meanHighMetres"), number(o, "medianMetres"),
				number(o, "p75Metres"),
				number(o, "p95Metres"), number(o, "rightFloorShare"), number(o, "comparisons"));
	}

	private static double number(JsonObject o, String name) {
		return o.get(name).isJsonNull() ? Double.NaN : o.get(name).getAsDouble();
	}

	private static String string(JsonObject o, String name) {
		return o.get(name).getAsString();
	}

	private static List<String> strings(JsonObject o, String name) {
		List<String> out = new ArrayList<>();
		for (JsonElement e : o.getAsJsonArray(name)) {
			out.add(e.getAsString());
		}
		return List.copyOf(out);
	}

	private static <T> List<T> all(JsonArray array, Function<JsonObject, T> each) {
		List<T> out = new ArrayList<>();
		for (JsonElement e : array) {
			out.add(each.apply(e.getAsJsonObject()));
		}
		return List.copyOf(out);
	}
}
