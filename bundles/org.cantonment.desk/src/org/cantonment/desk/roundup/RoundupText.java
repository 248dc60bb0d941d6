package org.cantonment.desk.roundup;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.cantonment.domain.campaign.DueWhat;
import org.cantonment.domain.campaign.Player;
import org.cantonment.domain.campaign.PointsLimit;
import org.cantonment.domain.campaign.Round;
import org.cantonment.domain.common.Id;

/** A round-up as plain text for a terminal or a chat: under 80 columns, the same every time. */
public final class RoundupText {
    private static final int WIDTH = 78;
    private static final int WIDEST_NAME = 24;

    private final Roundup roundup;
    private final Season season;
    private final int nameWidth;
    private final List<String> out = new ArrayList<>();

    private RoundupText(Roundup roundup) {
        this.roundup = roundup;
        this.season = roundup.season();
        this.nameWidth = season.campaign().players().stream().mapToInt(p -> TextWidth.of(season.name(p.id())))
                .map(width -> Math.min(width, WIDEST_NAME)).max().orElse(WIDEST_NAME);
    }

    /** The lines of a round-up. */
    public static List<String> lines(Roundup roundup) {
        RoundupText text = new RoundupText(roundup);
        text.head();
        text.meetings();
        text.results();
        text.lists();
        text.due();
        return text.out.stream().map(String::stripTrailing).toList();
    }

    private void head() {
        String title = season.campaign().title();
        if (roundup.round().isEmpty()) {
            say(title);
        } else {
            Round round = roundup.round().get();
            int last = season.rounds().get(season.rounds().size() - 1).number();
            say(title + ": round " + round.number() + " of " + last
                    + (round.label().isEmpty() ? "" : ", " + round.label()));
            say("Current because " + roundup.why() + "." + setting(round));
        }
        int week = roundup.bookings().newestWeek();
        say(week == 0 ? "Nothing is booked yet."
                : "Booked up to week " + week + roundup.bookings().newestDay().map(d -> ", " + d).orElse("") + ".");
    }

    private String setting(Round round) {
        List<String> parts = new ArrayList<>();
        round.eras().forEach(era -> parts.add(roundup.eraTitle().apply(era)));
        for (PointsLimit limit : round.limits()) {
            parts.add(limit.points() + " points" + (limit.players().isEmpty() ? ""
                    : " for " + limit.players().stream().map(season::name).collect(Collectors.joining(", "))));
        }
        return parts.isEmpty() ? "" : " " + String.join(", ", parts) + ".";
    }

    private void meetings() {
        if (roundup.round().isEmpty()) {
            return;
        }
        int number = roundup.round().get().number();
        heading("Who plays whom");
        int before = out.size();
        roundup.bookings().pairings().stream().filter(p -> p.round() == number).forEach(p -> game(p,
                roundup.bookings().gameOf(p)));
        roundup.bookings().games().stream().filter(g -> g.round().orElse(-1) == number).filter(this::unarranged)
                .forEach(g -> game(new Pairing(number, g.first(), g.second(), Optional.empty(), Optional.empty()),
                        Optional.of(g)));
        roundup.bookings().rests().stream().filter(r -> r.round().orElse(-1) == number).map(Bookings.Rest::player)
                .distinct().forEach(player -> line(season.name(player) + " rests"));
        if (out.size() == before) {
            line("Nobody is paired yet.");
        }
    }

    private boolean unarranged(Booked game) {
        return roundup.bookings().pairings().stream().noneMatch(p -> p.round() == game.round().orElse(-1)
                && game.between(p.first(), p.second()));
    }

    private void game(Pairing p, Optional<Booked> game) {
        String result = game.map(g -> result(g, p.first())).orElse("to play");
        String where = game.isPresent() ? "" : place(p);
        String two = "  " + TextWidth.pad(season.name(p.first()), nameWidth) + " " + TextWidth.pad(result, 17) + " "
                + TextWidth.cut(season.name(p.second()), nameWidth);
        if (TextWidth.of(two) + 2 + TextWidth.of(where) <= WIDTH) {
            out.add(where.isEmpty() ? two : two + "  " + where);
        } else {
            out.add(two);
            wrapped(where, "      ");
        }
    }

    private String place(Pairing p) {
        List<String> parts = new ArrayList<>();
        p.session().flatMap(s -> season.session(p.round(), s)).ifPresent(s -> parts.add(s.title()
                + s.date().map(d -> " " + d).orElse("") + s.time().map(t -> " " + t).orElse("")));
        p.table().ifPresent(t -> parts.add(season.tableName(t)));
        return String.join(", ", parts);
    }

    private static String result(Booked game, Id left) {
        boolean asNamed = game.first().equals(left);
        String score = game.score().map(s -> asNamed ? s.own() + ":" + s.theirs() : s.theirs() + ":" + s.own())
                .map(s -> " " + s).orElse("");
        String word = switch (game.kind()) {
            case DRAWN -> "drew with";
            case WON -> asNamed ? "beat" : "lost to";
            case FORFEITED -> asNamed ? "unplayed, won" : "unplayed, lost";
        };
        return word + score + (game.disputed() ? " ?" : "");
    }

    private void results() {
        if (roundup.bookings().games().isEmpty()) {
            return;
        }
        boolean points = roundup.table().stream().anyMatch(s -> s.points().isPresent());
        heading("Results so far");
        line(TextWidth.pad("", nameWidth) + "  played  won  drawn  lost" + (points ? "  points" : ""));
        for (Standing row : roundup.table()) {
            boolean left = roundup.bookings().withdrawn().contains(row.player());
            line(TextWidth.pad(season.name(row.player()), nameWidth) + number(row.played(), 8) + number(row.won(), 5)
                    + number(row.drawn(), 7) + number(row.lost(), 6)
                    + row.points().map(p -> TextWidth.padLeft(plain(p), 8)).orElse("")
                    + (left ? "  left" : ""));
        }
        remarks(points);
    }

    private void remarks(boolean points) {
        if (!points) {
            line("The campaign states no scoring, so games are only counted.");
        } else if (season.campaign().scorings().get(0).bonuses().isEmpty()) {
            line("Equal points are not separated here.");
        } else {
            line("Equal points are not separated here, and bonuses are not counted.");
        }
        long disputed = roundup.bookings().games().stream().filter(Booked::disputed).count();
        if (disputed > 0) {
            line("? disputed: counted as booked until it is ruled.");
        }
    }

    private static String number(int n, int width) {
        return TextWidth.padLeft(Integer.toString(n), width);
    }

    private static String plain(BigDecimal points) {
        BigDecimal bare = points.stripTrailingZeros();
        return bare.scale() < 0 ? bare.setScale(0).toPlainString() : bare.toPlainString();
    }

    private void lists() {
        if (roundup.round().isEmpty()) {
            return;
        }
        heading("Lists");
        for (Player player : roundup.expected()) {
            String name = TextWidth.pad(season.name(player.id()), nameWidth) + " ";
            Optional<ListLook> list = roundup.listOf(player.id());
            line(list.map(l -> name + look(l, WIDTH - nameWidth - 3)).orElse(name + "missing"));
        }
        if (roundup.expected().isEmpty()) {
            line("Nobody takes part.");
        }
    }

    private static String look(ListLook list, int width) {
        StringBuilder text = new StringBuilder("in, ");
        list.total().ifPresent(total -> {
            text.append(total);
            list.limit().ifPresent(limit -> text.append(" of ").append(limit));
            text.append(total == 1 ? " point, " : " points, ");
        });
        if (list.legal()) {
            return text.append("legal").toString();
        }
        int more = list.breaches().size() - 1;
        String tail = more == 0 ? "" : " (and " + more + " more)";
        text.append("not legal: ");
        int room = width - TextWidth.of(text.toString()) - tail.length();
        return text + TextWidth.cut(list.breaches().get(0).replaceAll("\\s+", " ").strip(), Math.max(8, room)) + tail;
    }

    private void due() {
        List<String> next = DueNext.of(season, roundup);
        if (!next.isEmpty()) {
            heading("Due next");
            next.forEach(this::line);
        }
    }

    private void heading(String words) {
        out.add("");
        out.add(words);
    }

    private void line(String text) {
        out.add("  " + text);
    }

    private void say(String text) {
        wrapped(text, "");
    }

    private void wrapped(String text, String indent) {
        TextWidth.wrap(text, WIDTH - indent.length()).forEach(line -> out.add(indent + line));
    }

    /** What is due, as a word. */
    static String word(DueWhat what) {
        return switch (what) {
            case LISTS -> "lists in";
            case REVEAL -> "lists are shown";
            case RESULTS -> "results in";
            case PROTESTS -> "last day for protests";
        };
    }
}
