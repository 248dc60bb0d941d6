package org.cantonment.rules.api;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.DateValue;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.NameValue;
import org.cantonment.domain.common.NumberValue;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.common.SettingValue;
import org.cantonment.domain.common.TextValue;
import org.cantonment.domain.common.YesNoValue;
import org.cantonment.domain.force.Entry;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.shelf.Shelf;

/**
 * What a check is asked: a list, and all that is known around it. Nothing of it can be changed. Later versions may know
 * more; {@link #about} makes one for tests.
 */
public final class Question {

    private final ForceList list;
    private final List<RuleSet> books;
    private final Occasion occasion;
    private final OptionalInt limit;
    private final Map<Id, Long> points;
    private final long used;
    private final List<Requirement> needs;
    private final List<ForceList> earlier;
    private final Optional<Campaign> campaign;
    private final List<Shelf> shelves;
    private final Map<String, SettingValue> settings;
    private final CancelToken cancel;
    private final Entries entries;

    Question(QuestionBuilder made) {
        this.list = made.list;
        this.entries = new Entries(made.list);
        this.books = List.copyOf(made.books);
        this.occasion = made.occasion;
        this.limit = made.limit;
        this.points = Map.copyOf(made.points);
        this.used = made.used;
        this.needs = List.copyOf(made.needs);
        this.earlier = List.copyOf(made.earlier);
        this.campaign = made.campaign;
        this.shelves = List.copyOf(made.shelves);
        this.settings = Map.copyOf(made.settings);
        this.cancel = made.cancel;
    }

    private Question(Question same, Map<String, SettingValue> settings, CancelToken cancel) {
        this.list = same.list;
        this.entries = same.entries;
        this.books = same.books;
        this.occasion = same.occasion;
        this.limit = same.limit;
        this.points = same.points;
        this.used = same.used;
        this.needs = same.needs;
        this.earlier = same.earlier;
        this.campaign = same.campaign;
        this.shelves = same.shelves;
        this.settings = Map.copyOf(settings);
        this.cancel = cancel;
    }

    /** The same question with other settings, until this token says that the answer is no longer wanted. */
    public Question with(Map<String, SettingValue> others, CancelToken until) {
        return new Question(this, others, until);
    }

    /** Begins a question about a list. */
    public static QuestionBuilder about(ForceList list) {
        return new QuestionBuilder(list);
    }

    /** The list, read and with names resolved. What could not be read is not in it. */
    public ForceList list() {
        return list;
    }

    /** The rule sets that the list is under, as written: lower ones before those that stand over them. */
    public List<RuleSet> books() {
        return books;
    }

    /** The list's era, round and day, so far as they are known. */
    public Occasion occasion() {
        return occasion;
    }

    /** The limit of points, if there is one. */
    public OptionalInt limit() {
        return limit;
    }

    /** The points of the whole list with its contingents. */
    public long used() {
        return used;
    }

    /** The points of an entry with all its copies, without what stands in it; 0 if it has no price. */
    public long points(Id entry) {
        return points.getOrDefault(entry, 0L);
    }

    /**
     * What the list needs on the table, entry by entry: its pieces and items, with strengths, options and copies reckoned
     * in. An item that is needed stands here; whether it is brought stands in {@link ForceList#brought()}.
     */
    public List<Requirement> needs() {
        return needs;
    }

    /** The player's lists for earlier rounds of the campaign, earlier ones first. */
    public List<ForceList> earlier() {
        return earlier;
    }

    /** The player's list of the nearest earlier round that has one. */
    public Optional<ForceList> before() {
        return earlier.isEmpty() ? Optional.empty() : Optional.of(earlier.get(earlier.size() - 1));
    }

    /** The campaign that turns the check on. */
    public Optional<Campaign> campaign() {
        return campaign;
    }

    /** Whose list it is. */
    public Optional<Player> player() {
        return campaign.flatMap(of -> of.players().stream().filter(p -> list.player().equals(Optional.of(p.id())))
                .findFirst());
    }

    /** The round that the list is for. */
    public Optional<Round> round() {
        return campaign.flatMap(of -> of.rounds().stream()
                .filter(r -> list.round().isPresent() && r.number() == list.round().getAsInt()).findFirst());
    }

    /**
     * The shelves that the player owns or shares, as they are written down, without the deeds of the weeks; in the order of
     * their files, and none if nobody wrote one.
     */
    public List<Shelf> shelves() {
        return shelves;
    }

    /** The first of the shelves; empty if there is none. */
    public Optional<Shelf> shelf() {
        return shelves.stream().findFirst();
    }

    /** Says when the answer is no longer wanted. */
    public CancelToken cancel() {
        return cancel;
    }

    /** A value for every parameter, written or preset, by its name. */
    public Map<String, SettingValue> settings() {
        return settings;
    }

    /** @throws IllegalArgumentException unless a parameter of this name takes a whole number */
    public int count(String name) {
        return value(name, NumberValue.class).number().intValueExact();
    }

    /** A number, or how many percent. @throws IllegalArgumentException unless a parameter of this name takes a number */
    public BigDecimal number(String name) {
        return value(name, NumberValue.class).number();
    }

    /** @throws IllegalArgumentException unless a parameter of this name takes a text */
    public String text(String name) {
        return value(name, TextValue.class).text();
    }

    /** @throws IllegalArgumentException unless a parameter of this name takes a day */
    public LocalDate date(String name) {
        return value(name, DateValue.class).date();
    }

    /** @throws IllegalArgumentException unless a parameter of this name takes yes or no */
    public boolean yes(String name) {
        return value(name, YesNoValue.class).yes();
    }

    /** A name as it was written. @throws IllegalArgumentException unless a parameter of this name takes a name */
    public String name(String name) {
        return value(name, NameValue.class).name();
    }

    private <T extends SettingValue> T value(String name, Class<T> type) {
        if (!type.isInstance(settings.get(name))) {
            throw new IllegalArgumentException("There is no " + type.getSimpleName() + " for a parameter " + name);
        }
        return type.cast(settings.get(name));
    }

    /**
     * All entries of the list in their order, whatever stands in one right behind it, with how often each stands on the
     * table: its own count times that of all it stands in.
     */
    public Map<Entry, Long> entries() {
        return entries.copies();
    }

    /** How many of each unit and formation the list has, by id. */
    public Map<Id, Long> counts() {
        return entries.counts();
    }

    /** How many of each unit and formation another list has, by id: of one for an earlier round. */
    public static Map<Id, Long> counts(ForceList other) {
        return new Entries(other).counts();
    }
}
