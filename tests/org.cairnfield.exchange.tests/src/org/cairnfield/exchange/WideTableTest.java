package org.cairnfield.exchange;

import static org.cairnfield.exchange.Surveys.read;
import static org.cairnfield.exchange.Surveys.sample;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.cairnfield.core.map.RadioMap;
import org.cairnfield.core.map.RadioMapBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WideTableTest {

	@TempDir
	Path folder;

	private static RadioMap map() {
		RadioMapBuilder b = new RadioMapBuilder();
		for (String name : List.of("00:00:5E:00:53:01", "=HYPERLINK(1)", "'=odd", "a,\"b\"\r\nc", " blank ", "time",
				"AP RSS", "never")) {
			b.accessPoint(name);
		}
		b.sample("Tide House", 0, 12.4, 7.85).device("guide A").time(1601130306250L).reading(0, -61).reading(1, -110);
		b.sample("-2", -1, -0.1, 1e-7).reading(2, 0).reading(3, -120).reading(4, -67);
		b.sample("@home", 3, 858.645, 123456.789).device("1.0").reading(5, -50).reading(6, -51);
		b.sample("Tide House", 0, 1, 2);
		return b.build();
	}

	@Test
	void writesItsLayoutToTheLetter() throws IntakeException, IOException {
		RadioMapBuilder b = new RadioMapBuilder();
		b.sample("Tide House", 0, 12.4, 7).device("=A").time(1601130306000L).reading("00:00:5E:00:53:01", -61);
		b.sample("-2", -1, 0, 1).reading("+b", -5);
		Path f = folder.resolve("w.csv");
		Locale before = Locale.getDefault();
		try {
			Locale.setDefault(Locale.GERMANY);
			WideTable.write(f, b.build(), List.of("S1", "-3"));
		} finally {
			Locale.setDefault(before);
		}
		assertEquals("id,time,device,building,floor,x,y,00:00:5E:00:53:01,'+b\r\n"
				+ "S1,2020-09-26T14:25:06Z,'=A,Tide House,0,12.4,7,-61,\r\n-3,,,-2,-1,0,1,,-5\r\n",
				Files.readString(f));
	}

	@Test
	void readsBackAsTheSameMap() throws IntakeException, IOException {
		RadioMap map = map();
		List<String> ids = List.of("S1", "=S2", "'-S3", "4");
		Path f = folder.resolve("w.csv");
		WideTable.write(f, map, ids);
		Intake in = read(f);
		assertEquals(ids, in.sampleIds());
		assertEquals(map.accessPoints(), in.map().accessPoints());
		assertEquals(map.sites(), in.map().sites());
		assertEquals(map.size(), in.map().size());
		for (int s = 0; s < map.size(); s++) {
			assertEquals(sample(map, s), sample(in.map(), s));
			assertEquals(map.timeMillis(s), in.map().timeMillis(s));
			assertEquals(map.device(s), in.map().device(s));
		}
		assertEquals(List.of("guide A", "1.0"), in.map().devices());
		Path again = folder.resolve("again.csv");
		WideTable.write(again, in.map(), in.sampleIds());
		assertEquals(-1, Files.mismatch(f, again), "equal maps give equal bytes");
	}

	@Test
	void refusesWhatATableCannotHold() {
		assertThrows(IllegalArgumentException.class,
				() -> WideTable.write(folder.resolve("w.csv"), map(), List.of("1")));
		RadioMapBuilder b = new RadioMapBuilder();
		b.sample("Ha\0ll", 0, 1, 1);
		assertThrows(IllegalArgumentException.class,
				() -> WideTable.write(folder.resolve("w.csv"), b.build(), List.of("1")));
		assertThrows(IntakeException.class, () -> WideTable.write(folder.resolve("no").resolve("w.csv"), map(),
				List.of("1", "2", "3", "4")));
	}
}
