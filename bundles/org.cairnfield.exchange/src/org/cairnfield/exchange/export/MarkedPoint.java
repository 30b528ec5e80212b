package org.cairnfield.exchange.export;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A point that is no sample, such as a place to visit.
 *
 * @param site       name of the site, see {@link SiteFrame#name}
 * @param xMetres    in the frame of the site; likewise {@code yMetres}
 * @param properties what else is known of it, in order: numbers and texts
 */
public record MarkedPoint(String site, int floor, double xMetres, double yMetres, Map<String, Object> properties) {

	public MarkedPoint {
		properties = Collections.unmodifiableMap(new LinkedHashMap<>(properties));
	}
}
