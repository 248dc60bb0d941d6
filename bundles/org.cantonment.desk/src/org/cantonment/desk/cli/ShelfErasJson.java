package org.cantonment.desk.cli;

import java.io.IOException;
import java.nio.file.Path;

import org.cantonment.desk.eras.ShelfAnswer;
import org.cantonment.stock.eras.Army;
import org.cantonment.stock.eras.Carry;
import org.cantonment.stock.eras.EraAnswer;
import org.cantonment.stock.eras.Fielded;
import org.cantonment.stock.eras.UnitAnswer;

import com.google.gson.stream.JsonWriter;

/** What a shelf is good for in every era as JSON, as docs/json/shelf-eras.schema.json describes it. */
final class ShelfErasJson {
    /** Changes when a reader of the old form would misunderstand the new one. */
    static final String FORMAT = "cantonment-shelf-eras-1";

    private final ShelfAnswer answer;

    ShelfErasJson(ShelfAnswer answer) {
        this.answer = answer;
    }

    String write(Terminal terminal, Path file) {
        return Json.text(json -> {
            json.beginObject();
            json.name("format").value(FORMAT);
            json.name("shelf").beginObject();
            json.name("file").value(terminal.show(file));
            json.name("owner").value(answer.owner());
            json.endObject();
            json.name("eras").beginArray();
            for (EraAnswer era : answer.eras().eras()) {
                era(json, era);
            }
            json.endArray();
            json.name("carries").beginArray();
            for (Carry carry : answer.eras().carries()) {
                carry(json, carry);
            }
            json.endArray();
            json.endObject();
        });
    }

    private void era(JsonWriter json, EraAnswer era) throws IOException {
        json.beginObject();
        json.name("era").value(era.era().name());
        json.name("title").value(answer.title(era.era()));
        json.name("pieces").value(era.pieces());
        json.name("army").beginObject();
        Army army = era.army();
        json.name("points").value(army.points());
        json.name("bound").value(army.bound());
        json.name("units").beginArray();
        for (Fielded fielded : army.units()) {
            json.beginObject();
            json.name("unit").value(fielded.unit().name());
            json.name("strength").value(fielded.strength());
            json.name("points").value(fielded.points());
            json.name("count").value(fielded.count());
            json.endObject();
        }
        json.endArray();
        json.endObject();
        json.name("units").beginArray();
        for (UnitAnswer unit : era.units()) {
            unit(json, unit);
        }
        json.endArray();
        json.endObject();
    }

    private void unit(JsonWriter json, UnitAnswer unit) throws IOException {
        json.beginObject();
        json.name("unit").value(unit.unit().name());
        json.name("title").value(answer.title(unit.unit()));
        json.name("strength").value(unit.strength());
        if (unit.copies() < UnitAnswer.ENDLESS) {
            json.name("copies").value(unit.copies());
            json.name("lacking").value(unit.lacking());
        }
        json.endObject();
    }

    private static void carry(JsonWriter json, Carry carry) throws IOException {
        json.beginObject();
        json.name("from").value(carry.from().name());
        json.name("to").value(carry.to().name());
        json.name("ofPieces").value(carry.ofPieces());
        json.name("pieces").value(carry.pieces());
        json.name("ofPoints").value(carry.ofPoints());
        json.name("points").value(carry.points());
        json.endObject();
    }
}
