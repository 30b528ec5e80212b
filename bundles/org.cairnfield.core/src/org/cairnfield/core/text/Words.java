package org.cairnfield.core.text;

import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * The words of a package, from its {@code messages.properties} or what a translator has put beside it. Those of the workbench
 * come by the platform's own class of this kind, in the same form; this one needs no platform.
 */
public abstract class Words {

	protected Words() {
	}

	/** The file of the package, for libraries that look up words themselves. */
	public static ResourceBundle of(Class<? extends Words> words) {
		return ResourceBundle.getBundle(words.getPackageName() + ".messages", Locale.getDefault(),
				words.getClassLoader());
	}

	/** Gives each static field of the class that is not final the text of its name. */
	protected static void load(Class<? extends Words> words) {
		ResourceBundle texts = of(words);
		for (Field field : words.getDeclaredFields()) {
			if (Modifier.isStatic(field.getModifiers()) && !Modifier.isFinal(field.getModifiers())) {
				try {
					field.setAccessible(true);
					field.set(null, texts.getString(field.getName()));
				} catch (IllegalAccessException e) {
					throw new IllegalStateException(e);
				}
			}
		}
	}

	/**
	 * Puts values into a text.
	 *
	 * @param text   with {0}, {1} and so on; two apostrophes stand for one, and what is between single ones stands as it is
	 * @param values as {@link String#valueOf} writes them
	 */
	public static String bind(String text, Object... values) {
		StringBuilder bound = new StringBuilder(text.length() + 16 * values.length);
		boolean quoted = false;
		for (int i = 0; i < text.length(); i++) {
			char c = text.charAt(i);
			int end = c == '{' && !quoted ? text.indexOf('}', i) : -1;
			if (c == '\'' && i + 1 < text.length() && text.charAt(i + 1) == '\'') {
				bound.append(c);
				i++;
			} else if (c == '\'') {
				quoted = !quoted;
			} else if (end > 0) {
				bound.append(values[Integer.parseInt(text.substring(i + 1, end))]);
				i = end;
			} else {
				bound.append(c);
			}
		}
		return bound.toString();
	}
}
