package org.cantonment.desk.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import org.cantonment.desk.files.BookFiles;
import org.cantonment.desk.files.FolderScan;

/**
 * What a call asks about, sorted by the folders whose books see each other.
 *
 * @param desks for each such folder the files asked about; empty where the whole folder is
 */
record Targets(Map<Path, Optional<Set<Path>>> desks) {
	/** A file's folder of books is looked for so many folders up. */
	private static final int UP = 6;

	/**
	 * Finds the folders.
	 *
	 * @param paths existing files that are books, and folders
	 */
	static Targets of(List<Path> paths) {
		Map<Path, Optional<Set<Path>>> desks = new LinkedHashMap<>();
		for (Path path : paths) {
			if (!Files.isDirectory(path)) {
				add(desks, deskOf(path.getParent()).orElse(path), Set.of(path));
				continue;
			}
			List<Path> books = FolderScan.of(path).books();
			Optional<Path> above = books.stream().anyMatch(Targets::leads) ? Optional.empty() : deskOf(path);
			if (above.isPresent() && !books.isEmpty()) {
				add(desks, above.get(), Set.copyOf(books));
			} else {
				desks.put(path, Optional.empty());
			}
		}
		return new Targets(desks);
	}

	private static void add(Map<Path, Optional<Set<Path>>> desks, Path desk, Set<Path> files) {
		Optional<Set<Path>> before = desks.get(desk);
		if (before == null) {
			desks.put(desk, Optional.of(new TreeSet<>(files)));
		} else {
			before.ifPresent(all -> all.addAll(files));
		}
	}

	/**
	 * The folder whose books a file or folder belongs to: the nearest one upwards that holds a campaign, else the nearest
	 * that holds a rule set.
	 *
	 * @param folder where to begin; it is asked first
	 */
	static Optional<Path> deskOf(Path folder) {
		return nearest(folder, "campaign").or(() -> nearest(folder, "rules"));
	}

	private static Optional<Path> nearest(Path folder, String extension) {
		Path at = folder;
		for (int up = 0; up <= UP && at != null; up++) {
			if (holds(at, extension)) {
				return Optional.of(at);
			}
			at = at.getParent();
		}
		return Optional.empty();
	}

	private static boolean holds(Path folder, String extension) {
		try {
			return FolderScan.children(folder).stream().anyMatch(child -> BookFiles.extension(child).equals(extension));
		} catch (IOException e) {
			return false; // a folder that may not be looked into leads nothing
		}
	}

	private static boolean leads(Path file) {
		String extension = BookFiles.extension(file);
		return extension.equals("campaign") || extension.equals("rules");
	}
}
