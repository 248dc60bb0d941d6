package org.cantonment.notation.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.cantonment.domain.common.DateValue;
import org.cantonment.domain.common.NameValue;
import org.cantonment.domain.common.NumberValue;
import org.cantonment.domain.common.Setting;
import org.cantonment.domain.common.SettingValue;
import org.cantonment.domain.common.TextValue;
import org.cantonment.domain.common.YesNoValue;
import org.cantonment.model.book.BookPackage;

/** Values by name, for methods and plug-ins. */
final class Settings {

    private Settings() {
    }

    /** @return those that have a name and a value that can be read */
    static List<Setting> read(Phrases phrases, List<org.cantonment.model.book.Setting> settings) {
        List<Setting> read = new ArrayList<>(settings.size());
        for (org.cantonment.model.book.Setting setting : settings) {
            if (setting.getName() != null) {
                value(phrases, setting.getValue()).ifPresent(value -> read.add(new Setting(setting.getName(), value)));
            }
        }
        return read;
    }

    private static Optional<SettingValue> value(Phrases phrases, org.cantonment.model.book.SettingValue value) {
        if (value instanceof org.cantonment.model.book.NumberValue number) {
            return phrases.decimal(number, BookPackage.Literals.NUMBER_VALUE__NUMBER, number.getNumber())
                    .map(amount -> new NumberValue(amount, number.isPercent()));
        }
        if (value instanceof org.cantonment.model.book.TextValue text) {
            return Optional.of(new TextValue(Reading.text(text.getText())));
        }
        if (value instanceof org.cantonment.model.book.DateValue date) {
            return phrases.date(date, BookPackage.Literals.DATE_VALUE__DATE, date.getDate()).map(DateValue::new);
        }
        if (value instanceof org.cantonment.model.book.YesNoValue yes) {
            return Optional.of(new YesNoValue(yes.isYes()));
        }
        return value instanceof org.cantonment.model.book.NameValue name
                ? Optional.ofNullable(name.getName()).map(NameValue::new) : Optional.empty();
    }
}
