package org.cantonment.desk.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The words of the commands about buying. */
final class ShoppingWords {
    private ShoppingWords() {
    }

    static void addTo(CommandSpec root) {
        root.addSubcommand("worth", worth());
        root.addSubcommand("buy", buy());
        root.addSubcommand("grow", grow());
    }

    private static CommandSpec worth() {
        CommandSpec spec = Words.command("worth", "Tells what a box is worth: what the same pieces cost in single boxes, what"
                + " it saves against them, and what it saves a player.");
        spec.addOption(Words.value("--for", "PLAYER", "Tell what it saves this player."));
        market(spec);
        forms(spec, "worth");
        return spec.addPositional(Words.one("0", "BOX", "A box, bundle or lot, by its name, code or title."))
                .addPositional(folder());
    }

    private static CommandSpec buy() {
        CommandSpec spec = Words.command("buy", "Tells what a player should buy so that lists can be fielded, at least cost:"
                + " the boxes, from whom, what to build of them, what is left over.");
        spec.addOption(Words.value("--budget", "MONEY", "Spend no more than this; the lists are served in their order."));
        spec.addOption(Words.value("--together", "PLAYERS", "Order together with these, with commas: boxes and postage are shared,"
                + " shelves are not."));
        spec.addOption(Words.value("--next", "NUMBER", "Tell so many plans more, the next best ones; 0 to 9."));
        spec.addOption(Words.value("--within", "MONEY", "Of the next best plans only those that cost at most so much more;"
                + " else half as much again."));
        market(spec);
        forms(spec, "buy");
        return spec.addPositional(Words.one("0", "PLAYER", "A player, by name or id.")).addPositional(folder());
    }

    private static CommandSpec grow() {
        CommandSpec spec = Words.command("grow", "Tells what a player should buy before which round, at least cost over all of"
                + " them: each round's list, what is bought and built by then, the money.");
        spec.addOption(Words.value("--rounds", "ROUNDS", "Which rounds, with commas: a round (3), a span (3-5); else all that"
                + " are still to be played."));
        spec.addOption(Words.value("--budgets", "MONEY", "What may be spent before each round, with commas, or one amount for"
                + " each of them; else as the campaign or the player's wish says."));
        spec.addOption(Words.flag("--saved", "What is left of these budgets may be spent later."));
        spec.addOption(Words.value("--bench", "TIME", "What can be built before each round: 6 hours, 90 minutes, 4 parts,"
                + " with 'per week' behind it if it is for each week; else as the player's wish says."));
        spec.addOption(Words.flag("--compose", "Compose lists even for rounds that have one; else only for those that have"
                + " none."));
        spec.addOption(Words.value("--least", "PERCENT", "A composed list uses at least so much of its limit; else 50."));
        spec.addOption(Words.value("--write", "FOLDER", "Write each composed list into a new file of this folder."));
        sellers(spec);
        forms(spec, "grow");
        return spec.addPositional(Words.one("0", "PLAYER", "A player, by name or id.")).addPositional(folder());
    }

    private static void market(CommandSpec spec) {
        spec.addOption(Words.value("--lists", "LISTS", "What is to be fielded, in order of priority, with commas: rounds (3),"
                + " spans of rounds (3-5), files; else all that is still to be played."));
        spec.addOption(Words.value("--also", "THINGS", "What is wanted beside the lists, with commas: pieces, parts, extras,"
                + " each with a number before it if it is more than one."));
        sellers(spec);
    }

    static void sellers(CommandSpec spec) {
        spec.addOption(Words.value("--from", "MAKERS", "Buy only what these make or sell, with commas."));
        spec.addOption(Words.value("--on", "DATE", "By the prices of this day, as in 2031-04-15; else of the newest one"
                + " booked."));
        spec.addOption(Words.value("--in", "CURRENCY", "Reckon in this currency, by the campaign's rates."));
    }

    static void forms(CommandSpec spec, String schema) {
        spec.addOption(Words.value("--seconds", "NUMBER", "Search no longer than this and tell the best so far."));
        spec.addOption(Words.flag("--json", "Answer in JSON, as docs/json/" + schema + ".schema.json says."));
        spec.addOption(Words.flag("--reply", "Answer in a few words to paste into a chat, under 500 characters."));
    }

    static PositionalParamSpec folder() {
        return PositionalParamSpec.builder().index("1").arity("0..1").type(String.class).paramLabel("FOLDER")
                .description("The campaign's folder; else the one that the call is made in.").build();
    }
}
