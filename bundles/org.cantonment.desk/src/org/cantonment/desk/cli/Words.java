package org.cantonment.desk.cli;

import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The words of the command line. Built by hand, not read from annotations: that takes half the time at the start. */
final class Words {
    static final String NAME = "cantonment";

    private Words() {
    }

    /** All commands with their options. */
    static CommandLine all() {
        CommandSpec root = command(NAME, "Checks lists against the rules of a campaign, adds up points, looks"
                + " into other eras and at rules before they are adopted, tidies books and tells where the campaign stands.");
        root.addOption(OptionSpec.builder("-V", "--version").versionHelp(true)
                .description("Say which version this is.").build());
        root.usageMessage().footer("", "Exit code 0: nothing breaks a rule; 1: something does;"
                + " 2: the call is wrong or something cannot be read.");
        root.addSubcommand("check", check());
        root.addSubcommand("points", points());
        root.addSubcommand("eras", eras());
        root.addSubcommand("turnout", turnout());
        root.addSubcommand("reach", reach());
        root.addSubcommand("shelf", shelf());
        ShoppingWords.addTo(root);
        root.addSubcommand("adopt", adopt());
        root.addSubcommand("checks", checks());
        root.addSubcommand("format", format());
        root.addSubcommand("roundup", roundup());
        CommandLine line = new CommandLine(root);
        line.setUnmatchedOptionsArePositionalParams(false).setAbbreviatedOptionsAllowed(false)
                .setExpandAtFiles(false).setUsageHelpWidth(80).setUsageHelpAutoWidth(false);
        return line;
    }

    private static CommandSpec check() {
        CommandSpec spec = command("check", "Checks books: whole campaign folders, or single files in the light of the"
                + " folder they stand in. Prints one finding a line, as file:line:column: severity code: message.");
        spec.addOption(flag("--json", "Answer in JSON, as docs/json/check.schema.json says."));
        return spec.addPositional(paths("PATH", "A folder with books, or a book."));
    }

    private static CommandSpec points() {
        CommandSpec spec = command("points", "Opens a list's points into their parts.");
        return spec.addPositional(paths("LIST", "A file that ends in .list."));
    }

    private static CommandSpec eras() {
        CommandSpec spec = command("eras", "Tells how a list stands in every era of its rules, and the least change that"
                + " makes it legal there; or what a shelf can field in each era, and what of it carries over.");
        spec.addOption(flag("--json", "Answer in JSON, as docs/json/eras.schema.json says."));
        spec.addOption(flag("--reply", "Answer in a few words to paste into a chat, under 500 characters."));
        spec.addOption(value("--next", "NUMBER", "Tell so many changes more, the next best ones; 0 to 9."));
        spec.addOption(value("--shelf", "SHELF", "Reckon with this shelf, and not with those of the list's player."));
        return spec.addPositional(one("0", "LIST|SHELF", "A file that ends in .list or .shelf."));
    }

    private static CommandSpec turnout() {
        CommandSpec spec = command("turnout", "Tells whether what a player has can field a list: who stands where, what is"
                + " to be built, and why what is short is short. Several lists: one choice of what is glued for all of them."
                + " With --session and --round, and a folder: who lends what to whom on that evening.");
        spec.addOption(flag("--json", "Answer in JSON, as docs/json/turnout.schema.json says."));
        spec.addOption(flag("--reply", "Answer in a few words to paste into a chat, under 500 characters."));
        spec.addOption(value("--week", "NUMBER", "With what was known after this week; else with what is there when the"
                + " list is played."));
        spec.addOption(value("--likeness", "LIKENESS", "Nothing less true than exact, kindred or stand-in; else whatever"
                + " the club allows."));
        spec.addOption(value("--session", "NAME", "Ask for this evening."));
        spec.addOption(value("--round", "NUMBER", "Of this round."));
        return spec.addPositional(paths("LIST", "Files that end in .list, or the campaign's folder."));
    }

    private static CommandSpec reach() {
        CommandSpec spec = command("reach", "Tells how far a player's shelf is from every formation in every era, in pieces"
                + " and in money, nearest first: with the fewest units and with the most. With --boxes: what each box on"
                + " sale would bring within reach by itself.");
        spec.addOption(flag("--boxes", "Tell of boxes, not of formations; those first that open most for their money."));
        spec.addOption(flag("--pieces", "Tell pieces only, no money."));
        spec.addOption(value("--era", "ERA", "Look into this era only."));
        spec.addOption(value("--week", "NUMBER", "With what was known after this week; else with what is there now."));
        ShoppingWords.sellers(spec);
        ShoppingWords.forms(spec, "reach");
        return spec.addPositional(one("0", "PLAYER", "A player, by name or id.")).addPositional(ShoppingWords.folder());
    }

    private static CommandSpec shelf() {
        CommandSpec spec = command("shelf", "Makes a shelf of a table of comma-separated values, or a table of a shelf.");
        spec.addOption(value("--to", "FILE", "Where it is to go; a table without it goes to standard output."));
        spec.addOption(value("--of", "PLAYER", "Whose the new shelf is, as in 'P-Heron', or 'the club'."));
        spec.addOption(value("--in", "CURRENCY", "The currency of the new shelf, as in EUR."));
        spec.addOption(value("--on", "DATE", "The day of the new shelf, as in 2031-04-15."));
        spec.addOption(flag("--replace", "Put the table's things in the place of those on a shelf that is there."));
        spec.addOption(OptionSpec.builder("--map").type(String[].class).arity("1").paramLabel("COLUMN=FIELD").description(
                "What a column holds: thing, count, certainty, state, loose, paid, on, from, printing, built, lost, left,"
                        + " note, oddment, worth or nothing. Kept in the shelf.").build());
        spec.addPositional(one("0", "import|export", "Which way."));
        return spec.addPositional(one("1", "FILE", "The table, or the shelf."));
    }

    private static CommandSpec adopt() {
        CommandSpec spec = command("adopt", "Tells what adopting a layer or a changed book of rules would do to the lists"
                + " of a campaign: who becomes illegal, who legal, whose totals change. Writes nothing.");
        spec.addOption(flag("--json", "Answer in JSON, as docs/json/adopt.schema.json says."));
        spec.addPositional(one("0", "RULES", "The book, a file that ends in .rules, in the folder or outside."));
        return spec.addPositional(one("1", "FOLDER", "The campaign's folder."));
    }

    private static CommandSpec checks() {
        CommandSpec spec = command("checks", "Tells which checks of others are at hand, from which plug-in, what they take"
                + " and find, which are shut out and why, and where a jar with checks is put.");
        spec.addOption(flag("--json", "Answer in JSON, as docs/json/checks.schema.json says."));
        spec.addOption(flag("--reference", "Write the pages of a handbook about them, in Markdown."));
        return spec.addPositional(PositionalParamSpec.builder().index("0").arity("0..1").type(String.class)
                .paramLabel("NAME|FOLDER").description("One check by its name; or a campaign's folder, to see which its"
                        + " campaign turns on.").build());
    }

    private static CommandSpec format() {
        CommandSpec spec = command("format", "Tidies books: blanks, indents by dots, nothing that has a meaning.");
        spec.addOption(flag("--check", "Change nothing; name the files that would change, and exit with 1 if any would."));
        return spec.addPositional(paths("PATH", "A folder with books, or a book."));
    }

    private static CommandSpec roundup() {
        CommandSpec spec = command("roundup", "Tells where a campaign stands: who plays whom, results, lists in and"
                + " missing, what is due next.");
        spec.addOption(OptionSpec.builder("--on").type(String.class).paramLabel("DATE")
                .description("Stand on this day, as in 2031-04-15; else on the newest one booked.").build());
        return spec.addPositional(one("0", "FOLDER", "The campaign's folder."));
    }

    static CommandSpec command(String name, String description) {
        CommandSpec spec = CommandSpec.create().name(name);
        spec.usageMessage().description(description);
        return spec.addOption(OptionSpec.builder("-h", "--help").usageHelp(true)
                .description("Say how this is used.").build());
    }

    static OptionSpec flag(String name, String description) {
        return OptionSpec.builder(name).type(boolean.class).arity("0").description(description).build();
    }

    static OptionSpec value(String name, String label, String description) {
        return OptionSpec.builder(name).type(String.class).paramLabel(label).description(description).build();
    }

    static PositionalParamSpec one(String index, String label, String description) {
        return PositionalParamSpec.builder().index(index).arity("1").required(true).type(String.class)
                .paramLabel(label).description(description).build();
    }

    private static PositionalParamSpec paths(String label, String description) {
        return PositionalParamSpec.builder().index("0..*").arity("1..*").required(true).type(String[].class)
                .paramLabel(label).description(description).build();
    }
}
