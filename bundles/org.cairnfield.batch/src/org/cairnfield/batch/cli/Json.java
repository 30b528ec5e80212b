package org.cairnfield.batch.cli;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import java.util.LinkedHashMap;
import java.util.Map;

/** JSON objects in the order in which fields are put; a number that is not finite becomes null. Whatever a terminal would obey is escaped. */
final class Json {

	private static final Gson GSON = new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().serializeNulls()
			.create();

	private final Map<String, Object> fields = new LinkedHashMap<>();

	static Json of(Map<String, Object> fields) {
		Json json = new Json();
		json.fields.putAll(fields);
		return json;
	}

	Json put(String name, Object value) {
		fields.put(name, value instanceof Double d && !Double.isFinite(d) ? null
				: value instanceof Json json ? json.fields : value);
		return this;
	}

	Map<String, Object> fields() {
		return fields;
	}

	@Override
	public String toString() {
		StringBuilder text = new StringBuilder();
		GSON.toJson(fields).chars().forEach(c -> {
			if (TerminalWriter.isHidden(c)) {
				text.append(String.format("\\u%04x", c));
			} else {
				text.append((char) c);
			}
		});
		return text.toString();
	}
}
