package org.cairnfield.ui.scope;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Addresses of access points where there is little room: what all of them begin with is left out. */
public final class ShortAddresses {

	private static final int WORTH_IT = 6;
	private static final int LEAST_LEFT = 5; // two bytes, as on the plan

	private ShortAddresses() {
	}

	/** A label for each address, such as "…53:2D"; the address itself where they have little in common. */
	public static Map<String, String> of(Collection<String> addresses) {
		List<String> all = new ArrayList<>(addresses);
		int common = all.size() < 2 ? 0 : all.get(0).length();
		for (String address : all) {
			int same = 0;
			while (same < Math.min(common, address.length()) && address.charAt(same) == all.get(0).charAt(same)) {
				same++;
			}
			common = same;
		}
		int shortest = all.stream().mapToInt(String::length).min().orElse(0);
		int most = Math.min(common, shortest - LEAST_LEFT);
		int cut = most <= 0 ? 0 : all.get(0).lastIndexOf(':', most - 1) + 1; // whole bytes
		Map<String, String> labels = new LinkedHashMap<>();
		for (String address : all) {
			labels.put(address, cut >= WORTH_IT ? "…" + address.substring(cut) : address);
		}
		return labels;
	}
}
