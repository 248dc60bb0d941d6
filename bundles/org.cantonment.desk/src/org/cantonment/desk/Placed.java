package org.cantonment.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

import org.cantonment.desk.LocatedFinding.RulePlace;
import org.cantonment.desk.judging.Judging;
import org.cantonment.desk.judging.Judging.Judged;
import org.cantonment.desk.judging.Meanings;
import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.NamesBook;
import org.cantonment.domain.campaign.Week;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Cancelled;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Progress;
import org.cantonment.domain.finding.Finding;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.notation.Document;
import org.cantonment.notation.Library;
import org.eclipse.xtext.service.OperationCanceledError;

/** From texts to findings at their places, redoing only what a change has touched. */
final class Placed {
	private final Library library;
	private final SortedMap<Path, Sheet> sheets;
	private final Judging judging = new Judging();
	private final Map<Path, Judged> last = new HashMap<>();
	private List<Finding> lastOfRules = List.of();
	private Meanings meanings = new Meanings(List.of(), List.of(), List.of(), List.of(), List.of());

	Placed(Library library, SortedMap<Path, Sheet> sheets) {
		this.library = library;
		this.sheets = sheets;
	}

	int judgements() {
		return judging.judgements();
	}

	DeskSnapshot settle(DeskScope scope, long number, CancelToken cancel, Progress progress) {
		boolean movedRules = read(cancel, progress);
		meanings = gather();
		Map<ForceList, Path> fileOf = new IdentityHashMap<>();
		sheets.forEach((file, sheet) -> {
			if (sheet.meaning() instanceof ForceList list) {
				fileOf.put(list, file);
			}
		});
		boolean books = sheets.entrySet().stream()
				.anyMatch(e -> e.getValue().meaning() instanceof RuleSet && scope.asks(e.getKey()));
		judging.bringUpToDate(meanings, list -> scope.asks(fileOf.get(list)), books, cancel, progress);
		Map<Path, Judged> judged = new HashMap<>();
		fileOf.forEach((list, file) -> judging.of(list).ifPresent(j -> judged.put(file, j)));
		return new DeskSnapshot(number, place(scope, judged, movedRules), Collections.unmodifiableMap(judged), meanings);
	}

	// Returns whether anything but lists was read anew, so that rules may stand elsewhere now.
	private boolean read(CancelToken cancel, Progress progress) {
		boolean moved = false;
		int done = 0;
		for (Map.Entry<Path, Sheet> entry : sheets.entrySet()) {
			cancel.check();
			progress.at(done++, sheets.size(), "Understanding files:");
			Document document = library.document(entry.getKey()).orElse(null);
			if (document == null) {
				continue;
			}
			try {
				document.read(cancel::cancelled);
			} catch (OperationCanceledError e) {
				throw new Cancelled();
			}
			if (entry.getValue().take(document) && !(entry.getValue().meaning() instanceof ForceList)) {
				moved = true;
			}
		}
		return moved;
	}

	private Meanings gather() {
		List<RuleSet> rules = new ArrayList<>();
		List<Campaign> campaigns = new ArrayList<>();
		List<Week> weeks = new ArrayList<>();
		List<NamesBook> names = new ArrayList<>();
		List<ForceList> lists = new ArrayList<>();
		for (Sheet sheet : sheets.values()) {
			if (sheet.meaning() instanceof RuleSet book) {
				rules.add(book);
			} else if (sheet.meaning() instanceof Campaign campaign) {
				campaigns.add(campaign);
			} else if (sheet.meaning() instanceof Week week) {
				weeks.add(week);
			} else if (sheet.meaning() instanceof NamesBook book) {
				names.add(book);
			} else if (sheet.meaning() instanceof ForceList list) {
				lists.add(list);
			}
		}
		return new Meanings(rules, campaigns, weeks, names, lists);
	}

	private SortedMap<Path, List<LocatedFinding>> place(DeskScope scope, Map<Path, Judged> judged,
			boolean movedRules) {
		boolean again = movedRules || !judging.ofRules().equals(lastOfRules);
		lastOfRules = judging.ofRules();
		Places places = new Places();
		Map<Path, List<Finding>> ofRules = places.sorted(lastOfRules);
		Map<Path, List<Finding>> twice = places.sorted(SameBook.find(sheets, library));
		SortedMap<Path, List<LocatedFinding>> all = new TreeMap<>();
		sheets.forEach((file, sheet) -> {
			if (!scope.asks(file)) {
				return;
			}
			Judged now = judged.get(file);
			if (again || now != last.get(file)) {
				sheet.unplace();
			}
			if (sheet.located() == null) {
				List<Finding> engine = new ArrayList<>(ofRules.getOrDefault(file, List.of()));
				engine.addAll(twice.getOrDefault(file, List.of()));
				engine.addAll(now == null ? List.of() : now.findings());
				sheet.keep(places.locate(file, sheet, engine));
			}
			all.put(file, sheet.located());
		});
		last.clear();
		last.putAll(judged);
		return Collections.unmodifiableSortedMap(all);
	}

	/** Where ids stand, worked out as far as it is asked. */
	private final class Places {
		private final Map<String, Path> byBook = new HashMap<>();

		Places() {
			sheets.forEach((file, sheet) -> {
				if (sheet.meaning() != null && !(sheet.meaning() instanceof ForceList)) {
					byBook.putIfAbsent(BookIds.of(sheet.meaning()), file);
				}
			});
		}

		Map<Path, List<Finding>> sorted(List<Finding> findings) {
			Map<Path, List<Finding>> sorted = new HashMap<>();
			for (Finding finding : findings) {
				Path file = byBook.get(finding.at().book());
				if (file != null) {
					sorted.computeIfAbsent(file, f -> new ArrayList<>()).add(finding);
				}
			}
			return sorted;
		}

		List<LocatedFinding> locate(Path file, Sheet sheet, List<Finding> findings) {
			Document document = library.document(file).orElse(null);
			List<LocatedFinding> located = sheet.own(document);
			for (Finding finding : findings) {
				located.add(LocatedFinding.of(file, document.lines(), document.locate(finding),
						finding.rule().flatMap(this::rule).orElse(null)));
			}
			located.sort(null);
			return located;
		}

		private Optional<RulePlace> rule(Id id) {
			Path file = byBook.get(id.book());
			return Optional.ofNullable(file).flatMap(library::document).map(document -> new RulePlace(id, file,
					document.lines().lineOf(document.regionOf(id).getOffset()) + 1));
		}
	}
}
