package org.cantonment.desk.tests;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** A campaign folder small enough to keep in mind: one book of each kind, two lists that are legal and one that is not. */
final class SmallWar {
    static final String RANGE = """
            range Oddbarrow "Oddbarrow Works" in EUR
            family Wagons "Wagons"
            family Gun-Wagons "Wagons with guns" in Wagons
            piece Gun-Wagon "Gun wagon" in Gun-Wagons
            piece Carrier "Carrier" in Wagons
            piece Spotter "Spotter" in Wagons
            piece Officer "Officer on foot"
            piece Bicycle "Bicycle"
            bits Wheels "Spare wheels"
            extra War-Book "Little book of the war" worth 8.00
            ## One frame, two ways to build it.
            part Frame "Carrier frame"
              . builds 2 Spotter leaves 2 Wheels
              . builds 3 Carrier takes 40 minutes
              . takes 90 minutes
              . glued
            box O-12 "Carrier section"
              . 2 Frame, Officer
              . at most 1 of Officer
              . price 24.50 from 2031-01-01 to 2031-12-31
              . price 26.00 from 2032-01-01
              . stock 12 on 2031-02-01
              . printing Second "Second printing" from 2031-06-01
                .. 3 Frame
            bundle O-50 "Company at the dyke"
              . 6 Frame, 2 Officer, War-Book
              . instead of 3 O-12
              . price 60.00 from 2031-01-01
            seller Quay-Shop "The shop on the quay" in EUR
              . postage 6.00 free from 50.00
              . delivers in 5 days
              . offers 3 O-12 for 20.00 each to 2031-04-30
              . lot Attic-Tin "A tin from the attic" for 25.00
                .. 14 Carrier
                .. guessed 6 Spotter
            """;
    static final String RULES = """
            rules Lake-Book "The Lake Book"
            side Weir "Weir League"
            side Fen "Fen Folk"
            era Reed-Year "The Reed Year"
            era Dyke-War "The Dyke War" after Reed-Year
            era Long-Thaw "The Long Thaw" after Dyke-War
            kind Armour "Armour"
            kind Scouting "Eyes"
            unit Staff "Staff"
              . strength 1 for 10 points
              . strength 1 for 12 points from Long-Thaw
              . needs Officer
            unit Tread-Troop "Tread troop"
              . is Armour
              . strength 3 for 24 points
              . strength 5 for 40 points
              . each needs Gun-Wagon or Carrier
              . option Long-Guns "Long guns", at most 2, for 2 points each
              . option Mast for 3 points, adds Spotter
            unit Crank-Troop "Crank troop"
              . is Armour
              . strength 4 for 20 points
              . each needs Carrier
              . available to Dyke-War
            unit Crank-Company "Crank company"
              . is Armour
              . strength 8 for 36 points
              . let Toll be count of Armour minus 4 but at least 0
              . dearer by Toll points from Long-Thaw
              . cheaper by 1 point when sum per unit of its strength is at least 40
            unit Bicycle-Post "Bicycle post"
              . is Scouting
              . strength 2 for 8 points from Dyke-War
              . available from Dyke-War
              . each needs Bicycle
            formation Causey-Squadron "Causey squadron"
              . billet Command 1 of Staff
              . billet Line 2 to 3 of Tread-Troop, Crank-Troop
              . billet Scouts 0 to 1 of Scouting
            limit Few-Treads "Tread troops are rare"
              . at most 2 of Tread-Troop
              . says "The works at Oddbarrow turn out few."
            limit Enough-Eyes "Somebody must look"
              . let Wheels be count of Armour
              . when Wheels is more than 6 or not the era is Reed-Year, Dyke-War, Long-Thaw
              . always count of Scouting is at least Wheels divided by 4 rounded up
              . always each Causey-Squadron has count of units is at least 1
            limit Some-Armour
              . at most 90 percent of the limit on Armour
            """;
    static final String LAYER = """
            rules Winter "Winter rules" over Lake-Book in rounds 1 to 4
            tighten Few-Treads
              . at most 1 of Tread-Troop
            """;
    static final String CAMPAIGN = """
            campaign Heron-Season "The Heron season" from 2031-03-03
            plays Lake-Book, Winter
            player Ombra "Ombra"
              . side Weir
            player Brack "Brack"
              . side Weir
            player Quill "Quill"
              . side Fen
            player Nib "Nib"
              . side Fen
            table Table-1 "Table 1"
            scoring Three-One
              . win 3, draw 1, loss 0
            round 1 "The first frost"
              . era Reed-Year
              . limit 80 points
              . play from 2031-03-10 to 2031-03-16
              . Ombra meets Brack
              . Quill meets Nib
            round 2 "The causeway"
              . era Dyke-War
              . limit 100 points
              . limit 120 points for Nib
              . lists by 2031-03-20 at 20:00
              . play from 2031-03-24 to 2031-03-30
              . session Tuesday on 2031-03-25 at 19:00
              . Ombra meets Quill at Table-1 in Tuesday
              . Brack meets Nib
            """;
    static final String WEEK = """
            week 2 of Heron-Season
            Ombra beat Brack 5:2 at Table-1 on 2031-03-11
            Quill drew Nib 3:3 on 2031-03-12
            """;
    static final String LIST_LEGAL = """
            list by Ombra round 2
            Causey-Squadron as Herons "The Herons"
              . Command: Staff
              . Tread-Troop of 5, 2 Long-Guns, Mast as Reds "The Reds"
              . Crank-Troop
              . Bicycle-Post
            """;
    static final String LIST_BROKEN = """
            list by Brack round 2
            Causey-Squadron
              . Staff
              . 2 Tread-Troop of 5
            """;
    static final String LIST_FREE = """
            list Dream under Lake-Book in Dyke-War to 120 points
            Causey-Squadron
              . Staff
              . 2 Tread-Troop of 3
            """;
    static final String SHELF = """
            shelf of Ombra in EUR on 2031-03-01
            O-12 for 18.00 on 2031-02-20 from "The shop on the quay"
            3 Frame loose between games
            4 Gun-Wagon, 2 painted, 1 primed from "school days"
            guessed 6 Carrier
            oddment 2 "Range ruler" worth 4.00
            wish Spring
              . first Causey-Squadron
              . budget 40.00 per round saved
              . bench 3 hours per week
            """;

    private SmallWar() {
    }

    /** All files by their path in the folder. */
    static Map<String, String> files() {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("books/lake.rules", RULES);
        files.put("books/oddbarrow.range", RANGE);
        files.put("books/winter.rules", LAYER);
        files.put("heron.campaign", CAMPAIGN);
        files.put("lists/brack-2.list", LIST_BROKEN);
        files.put("lists/dream.list", LIST_FREE);
        files.put("lists/ombra-2.list", LIST_LEGAL);
        files.put("ombra.shelf", SHELF);
        files.put("week-2.week", WEEK);
        return files;
    }

    /** Writes them all into a folder. */
    static Path into(Path folder) {
        try {
            for (Map.Entry<String, String> file : files().entrySet()) {
                Path path = folder.resolve(file.getKey());
                Files.createDirectories(path.getParent());
                Files.writeString(path, file.getValue());
            }
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
