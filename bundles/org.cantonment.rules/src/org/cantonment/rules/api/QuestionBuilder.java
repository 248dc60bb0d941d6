package org.cantonment.rules.api;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

import org.cantonment.domain.campaign.Campaign;
import org.cantonment.domain.common.CancelToken;
import org.cantonment.domain.common.Id;
import org.cantonment.domain.common.Occasion;
import org.cantonment.domain.common.SettingValue;
import org.cantonment.domain.force.ForceList;
import org.cantonment.domain.force.Requirement;
import org.cantonment.domain.rules.RuleSet;
import org.cantonment.domain.shelf.Shelf;

/** Makes a question. Whatever is not said is not known: no books, no limit, no campaign, nothing earlier. */
public final class QuestionBuilder {

    final ForceList list;
    List<RuleSet> books = List.of();
    Occasion occasion = Occasion.UNKNOWN;
    OptionalInt limit = OptionalInt.empty();
    Map<Id, Long> points = Map.of();
    long used;
    List<Requirement> needs = List.of();
    List<ForceList> earlier = List.of();
    Optional<Campaign> campaign = Optional.empty();
    List<Shelf> shelves = List.of();
    Map<String, SettingValue> settings = new HashMap<>();
    CancelToken cancel = CancelToken.NEVER;

    QuestionBuilder(ForceList list) {
        this.list = Objects.requireNonNull(list, "list");
    }

    /** The question. */
    public Question ask() {
        return new Question(this);
    }

    /** Under these rule sets, lower ones first. */
    public QuestionBuilder under(List<RuleSet> ruleSets) {
        books = ruleSets;
        return this;
    }

    /** At this time. */
    public QuestionBuilder at(Occasion time) {
        occasion = time;
        return this;
    }

    /** Under this limit of points, if there is one. */
    public QuestionBuilder to(OptionalInt limitOfPoints) {
        limit = limitOfPoints;
        return this;
    }

    /** At this cost. @param byEntry the points of each entry with its copies, without what stands in it */
    public QuestionBuilder costs(long whole, Map<Id, Long> byEntry) {
        used = whole;
        points = byEntry;
        return this;
    }

    /** With these needs. */
    public QuestionBuilder needs(List<Requirement> requirements) {
        needs = requirements;
        return this;
    }

    /** After these lists of the player, earlier ones first. */
    public QuestionBuilder after(List<ForceList> lists) {
        earlier = lists;
        return this;
    }

    /** In this campaign. */
    public QuestionBuilder in(Campaign season) {
        campaign = Optional.of(season);
        return this;
    }

    /** From these shelves, which the player owns or shares. */
    public QuestionBuilder from(List<Shelf> own) {
        shelves = own;
        return this;
    }

    /** From this shelf, if there is one. */
    public QuestionBuilder from(Optional<Shelf> own) {
        return from(own.stream().toList());
    }

    /** With every parameter of a check at its preset; those without one stay open. */
    public QuestionBuilder presets(Guest guest) {
        guest.parameters().forEach(p -> p.preset().ifPresent(value -> settings.put(p.name(), value)));
        return this;
    }

    /** With a setting. */
    public QuestionBuilder with(String name, SettingValue value) {
        settings.put(name, value);
        return this;
    }

    /** Until this token says that the answer is no longer wanted. */
    public QuestionBuilder until(CancelToken token) {
        cancel = token;
        return this;
    }
}
