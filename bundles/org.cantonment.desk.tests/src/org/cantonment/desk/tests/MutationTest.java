package org.cantonment.desk.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.nio.file.Path;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.cantonment.desk.CampaignDesk;
import org.cantonment.desk.DeskSnapshot;
import org.cantonment.desk.FindingCodes;
import org.cantonment.desk.LocatedFinding;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Progress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever is done to a book, the desk has an answer: findings inside the file, with codes that are documented, and no
 * damage beyond the lines that were touched and those that belong to them.
 */
class MutationTest {
	private static final long SEED = 20310303L;
	private static final int CASES = 3_000;

	@TempDir
	Path folder;

	@Test
	void everySpoiltBookGetsAnAnswer() {
		Map<String, String> files = SmallWar.files();
		SmallWar.into(folder);
		CampaignDesk desk = CampaignDesk.open(folder, CancelToken.NEVER, Progress.SILENT);
		Set<String> before = form(desk.snapshot().findings());
		Mutator mutator = new Mutator(files, SEED);
		for (int i = 0; i < CASES; i++) {
			Mutation mutation = mutator.next();
			Path file = folder.resolve(mutation.file());
			String name = "case " + i + ", " + mutation.what();
			try {
				DeskSnapshot spoilt = desk.update(file, mutation.text(), CancelToken.NEVER);
				inside(spoilt, desk, name);
				nearTheDamage(spoilt.findings(file), mutation, name);
				DeskSnapshot mended = desk.update(file, files.get(mutation.file()), CancelToken.NEVER);
				assertEquals(before, form(mended.findings()), "mended again after " + name);
			} catch (RuntimeException | StackOverflowError e) {
				fail(name + " brought down the desk", e);
			}
		}
	}

	private void inside(DeskSnapshot snapshot, CampaignDesk desk, String name) {
		Map<Path, String[]> lines = new HashMap<>();
		for (LocatedFinding finding : snapshot.findings()) {
			String text = desk.text(finding.file()).orElseThrow();
			String where = name + ": " + finding;
			String[] split = lines.computeIfAbsent(finding.file(), f -> text.split("\r\n|\n|\r", -1));
			assertTrue(finding.offset() >= 0 && finding.length() >= 0
					&& finding.offset() + finding.length() <= text.length(), where);
			assertTrue(finding.line() >= 1 && finding.line() <= split.length, where);
			assertTrue(finding.column() >= 1 && finding.column() <= split[finding.line() - 1].length() + 1, where);
			assertTrue(FindingCodes.known(finding.code()), "No such code is documented; " + where);
			assertTrue(!finding.message().isBlank() && finding.message().indexOf("null") < 0, where);
		}
	}

	// What cannot be read is told where the damage is, or on lines that belong to a damaged line or to one that is gone.
	private static void nearTheDamage(List<LocatedFinding> findings, Mutation mutation, String name) {
		if (mutation.touched().get(1)) {
			return; // another first line makes another book of it
		}
		BitSet near = near(mutation);
		for (LocatedFinding finding : findings) {
			assertTrue(!finding.code().startsWith("form.") || near.get(finding.line()), name + ": " + finding);
		}
	}

	/** The touched lines, and the lines with dots that follow them. */
	static BitSet near(Mutation mutation) {
		String[] lines = mutation.text().split("\r\n|\n|\r", -1);
		BitSet near = new BitSet();
		boolean within = false;
		for (int line = 1; line <= lines.length; line++) {
			within = mutation.touched().get(line) || within && lines[line - 1].strip().startsWith(".");
			near.set(line, within);
		}
		return near;
	}

	private static Set<String> form(List<LocatedFinding> findings) {
		Set<String> all = new HashSet<>();
		findings.forEach(f -> all.add(f.file() + ":" + f.line() + ":" + f.column() + " " + f.code() + " " + f.message()));
		return all;
	}
}
