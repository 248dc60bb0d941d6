package org.cantonment.workbench.shopping;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;

import org.cantonment.desk.shopping.Counter.Choice;
import org.cantonment.desk.shopping.Counter.Wish;
import org.cantonment.desk.shopping.Errand;
import org.cantonment.domain.common.Id;
import org.eclipse.jface.layout.PixelConverter;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Text;

/** Where it is chosen what for, for how much, by whose day's prices, and which box is looked at. */
final class BuyingBar {

    private static final String ALL = "All still to be played";
    private static final String NO_BOX = "None";

    private final Runnable changed;
    private final Button lists;
    private final Menu menu;
    private final Text budget;
    private final Text day;
    private final Combo box;
    private final Button growth;
    private Optional<Id> whose = Optional.empty();
    private List<Choice> choices = List.of();
    private List<Choice> boxes = List.of();
    private final Set<String> chosen = new LinkedHashSet<>();
    private int next;

    BuyingBar(Composite parent, Runnable changed) {
        this.changed = changed;
        Composite line = new Composite(parent, SWT.NONE);
        line.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        GridLayout layout = new GridLayout(9, false);
        layout.marginHeight = 0;
        layout.marginWidth = 4;
        line.setLayout(layout);
        int letter = new PixelConverter(line).convertWidthInCharsToPixels(1);
        label(line, "For:");
        lists = new Button(line, SWT.PUSH);
        lists.setToolTipText("The lists that are to be fielded, in the order of their rounds.");
        lists.setLayoutData(width(27 * letter));
        menu = new Menu(lists);
        lists.setMenu(menu);
        lists.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> menu.setVisible(true)));
        label(line, "B&udget:");
        budget = text(line, "no end of money", 16 * letter);
        label(line, "&Day of prices:");
        day = text(line, "newest booked", 14 * letter);
        label(line, "&Worth of:");
        box = new Combo(line, SWT.READ_ONLY | SWT.DROP_DOWN);
        box.setItems(NO_BOX);
        box.select(0);
        box.setLayoutData(width(22 * letter));
        box.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> changed.run()));
        growth = new Button(line, SWT.CHECK);
        growth.setText("&Growth plan");
        growth.setToolTipText("What to buy before which round; the budget is then what each round has.");
        growth.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> changed.run()));
        name();
    }

    private static void label(Composite line, String words) {
        new Label(line, SWT.NONE).setText(words);
    }

    private Text text(Composite line, String message, int width) {
        Text text = new Text(line, SWT.BORDER | SWT.SINGLE);
        text.setMessage(message);
        text.setLayoutData(width(width));
        text.addModifyListener(event -> changed.run());
        return text;
    }

    private static GridData width(int width) {
        GridData data = new GridData(SWT.LEFT, SWT.CENTER, false, false);
        data.widthHint = width;
        return data;
    }

    /** One plan more. */
    void more() {
        next = Math.min(9, next + 1);
        changed.run();
    }

    /**
     * What is asked for.
     *
     * @return the wish; empty if the day is none
     */
    Optional<Wish> wish() {
        Optional<LocalDate> on = Optional.empty();
        if (!day.getText().isBlank()) {
            try {
                on = Optional.of(LocalDate.parse(day.getText().strip()));
            } catch (DateTimeParseException none) {
                return Optional.empty();
            }
        }
        Optional<Id> what = box.getSelectionIndex() < 1 ? Optional.empty()
                : Optional.of(Id.of(boxes.get(box.getSelectionIndex() - 1).word()));
        List<String> words = choices.stream().map(Choice::word).filter(chosen::contains).toList();
        return Optional.of(new Wish(Errand.of(words, on), budget.getText(), next, what, growth.getSelection()));
    }

    /** Offers what can be chosen; a choice is kept as long as it is the same player's. */
    void offer(Optional<Id> player, List<Choice> newLists, List<Choice> newBoxes) {
        if (!player.equals(whose)) {
            whose = player;
            next = 0;
            chosen.clear();
        }
        if (!newLists.equals(choices)) {
            choices = newLists;
            chosen.retainAll(choices.stream().map(Choice::word).toList());
            fill();
        }
        name();
        if (!newBoxes.equals(boxes)) {
            String selected = box.getText();
            boxes = newBoxes;
            List<String> items = new ArrayList<>(Stream.concat(Stream.of(NO_BOX), boxes.stream().map(Choice::title)).toList());
            box.setItems(items.toArray(String[]::new));
            box.select(Math.max(0, items.indexOf(selected)));
        }
    }

    private void fill() {
        for (MenuItem item : menu.getItems()) {
            item.dispose();
        }
        item(ALL, chosen::isEmpty, chosen::clear);
        new MenuItem(menu, SWT.SEPARATOR);
        for (Choice choice : choices) {
            item(choice.title(), () -> chosen.contains(choice.word()), () -> {
                if (!chosen.remove(choice.word())) {
                    chosen.add(choice.word());
                }
            });
        }
    }

    private void item(String title, BooleanSupplier on, Runnable choose) {
        MenuItem item = new MenuItem(menu, SWT.CHECK);
        item.setText(title);
        item.setSelection(on.getAsBoolean());
        item.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            choose.run();
            fillAgain();
            changed.run();
        }));
    }

    // The items are made anew once the choice is through: an item cannot be disposed of while it is chosen.
    private void fillAgain() {
        name();
        lists.getDisplay().asyncExec(() -> {
            if (!menu.isDisposed()) {
                fill();
            }
        });
    }

    private void name() {
        List<String> rounds = choices.stream().map(Choice::word).filter(chosen::contains).toList();
        lists.setText("&Lists: " + (rounds.isEmpty() ? "all still to be played" : "rounds " + String.join(", ", rounds)));
    }
}
