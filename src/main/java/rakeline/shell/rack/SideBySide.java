package rakeline.shell.rack;

import java.awt.BorderLayout;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import rakeline.figure.BikeDrawing;
import rakeline.figure.Figure;
import rakeline.geometry.Bike;
import rakeline.shell.figures.FigureView;
import rakeline.shell.figures.Handles;
import rakeline.shell.look.Look;
import rakeline.shell.look.Scrolled;
import rakeline.shell.look.Words;
import rakeline.study.Progress;

/** Bikes of the rack compared, as built or at the same contact points, and matched to stock parts. */
final class SideBySide extends JPanel {
    private final transient Look look;
    private final transient RackStore store;
    private final transient RackStock stock;
    private final transient PairingChoice choice;
    private final JPanel taking;
    private final Waiting waiting;
    private final Shown shown;
    private final Runnable reveal;
    private transient Supplier<List<RackBike>> chosen = List::of;
    private transient Object question = "";
    private int asked;
    private transient List<String> drawn = List.of();
    private transient List<FigureView> views = List.of();

    /**
     * @param chosen the bikes that are put side by side
     * @param reveal brings this into sight
     */
    SideBySide(Look look, RackStore store, RackStock stock, Supplier<List<RackBike>> chosen, Runnable reveal) {
        super(new BorderLayout());
        this.look = look;
        this.store = store;
        this.stock = stock;
        this.chosen = chosen;
        this.reveal = reveal;
        setBackground(look.paper());
        Handles.in(this, new RackHandles(store, () -> drawn));
        choice = new PairingChoice(look, store);
        shown = new Shown(look);
        taking = new Lines(look);
        waiting = new Waiting(look, this::calledOff);
        JScrollPane scroll = new JScrollPane(
                new Scrolled(look, shown),
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(null);
        scroll.getViewport().setBackground(look.paper());
        scroll.getVerticalScrollBar().setUnitIncrement(look.space(8));
        JPanel above = new JPanel(new BorderLayout());
        above.setOpaque(false);
        above.add(choice.line(look), BorderLayout.NORTH);
        above.add(waiting, BorderLayout.CENTER);
        above.add(taking, BorderLayout.SOUTH);
        add(above, BorderLayout.NORTH);
        add(scroll, BorderLayout.CENTER);
        say(
                "Select bikes on the table and press Compare, or press Match for the stock parts that put the same contact points on each.");
        choice.listParts();
    }

    /** Offers the stock parts whose files lie in the folders now, and those that come with the program. */
    void listParts() {
        choice.listParts();
    }

    /** Shows what is chosen now, and what follows from it. */
    void refresh() {
        choice.refresh();
        if (isShowing()) {
            find();
        }
    }

    private void find() {
        RackChoices choices = store.state().choices();
        List<RackBike> rows = choices.beside().ids().stream()
                .flatMap(id -> store.row(id).stream())
                .filter(row -> row.bike().isPresent())
                .toList();
        switch (choices.beside().how()) {
            case COMPARED -> putSideBySide(rows, choices.at());
            case MATCHED -> findParts(rows);
            case NOTHING -> {
                // the words that say how to begin stay
            }
        }
    }

    private List<String> chosen(int fewest) {
        List<RackBike> selected = whole(chosen.get());
        return (selected.size() >= fewest ? selected : whole(store.rows()))
                .stream().map(RackBike::id).toList();
    }

    private static List<RackBike> whole(List<RackBike> rows) {
        return rows.stream().filter(row -> row.bike().isPresent()).toList();
    }

    private static List<Bike> bikes(List<RackBike> rows) {
        return rows.stream().flatMap(row -> row.bike().stream()).toList();
    }

    /** Puts the selected bikes side by side; all of them where fewer than two are selected. */
    void compare() {
        put(RackChoices.How.COMPARED, 2);
    }

    /** Matches each of the selected bikes to the chosen contact points; all of them where none is selected. */
    void match() {
        put(RackChoices.How.MATCHED, 1);
    }

    private void put(RackChoices.How how, int fewest) {
        RackChoices.Beside beside = new RackChoices.Beside(how, chosen(fewest));
        store.choose(choices -> choices.with(beside));
        reveal.run();
        find();
    }

    private void putSideBySide(List<RackBike> rows, BikeDrawing.At where) {
        Pairing pairing = choice.of(bikes(rows));
        List<String> ids = rows.stream().map(RackBike::id).toList();
        ask(List.of(pairing, where, ids), progress -> pairing.compared(where, progress), figures -> {
            drawn = ids;
            showFigures(figures);
        });
    }

    /** The same is not asked twice; what was asked last counts, also where an answer to something before comes later. */
    private <T> void ask(Object what, Function<Progress, T> work, Consumer<T> answer) {
        if (what.equals(question)) {
            return;
        }
        question = what;
        int number = ++asked;
        Progress progress = waiting.begin();
        store.study()
                .run(
                        () -> work.apply(progress),
                        outcome -> onlyFor(number, () -> answer.accept(outcome)),
                        sentence -> onlyFor(number, () -> say(sentence)));
    }

    private void onlyFor(int number, Runnable work) {
        if (number == asked) {
            waiting.end();
            work.run();
        }
    }

    private void calledOff() {
        asked++;
        question = "";
        say("Stopped. Press Compare or Match to begin again.");
    }

    private void showFigures(List<Figure> figures) {
        taking.removeAll();
        if (!isShown(figures)) {
            views = figures.stream().map(figure -> new FigureView(look)).toList();
            shown.show(views);
        }
        for (int i = 0; i < figures.size(); i++) {
            views.get(i).show(figures.get(i));
        }
        shown.revalidate();
        revalidate();
    }

    /** Whether figures of the same kinds are shown, so that a hand that holds one of them keeps it. */
    private boolean isShown(List<Figure> figures) {
        return figures.stream()
                .map(Object::getClass)
                .toList()
                .equals(views.stream()
                        .flatMap(view -> view.figure().stream())
                        .map(Object::getClass)
                        .toList());
    }

    private void findParts(List<RackBike> rows) {
        if (rows.isEmpty()) {
            question = "";
            say("The rack has no bike yet.");
        } else {
            Pairing pairing = choice.of(bikes(rows));
            ask(pairing, pairing::matched, this::showOptions);
        }
    }

    private void showOptions(List<Pairing.Options> found) {
        showFigures(found.stream().map(Pairing.Options::table).toList());
        JComboBox<Choice<Bike>> option = new JComboBox<>();
        found.forEach(one -> IntStream.range(0, one.bikes().size())
                .mapToObj(i -> new Choice<>(
                        one.of().name() + ", " + (i + 1), one.bikes().get(i)))
                .forEach(option::addItem));
        Lines line = (Lines) taking;
        line.labelled("Option", option, "rack option");
        JButton take = new JButton("Put it on the rack");
        take.setName("rack take");
        take.addActionListener(
                event -> take(option.getItemAt(option.getSelectedIndex()).value()));
        line.add(take);
        revalidate();
    }

    private void take(Bike bike) {
        stock.create(List.of(bike));
    }

    private void say(String sentence) {
        taking.removeAll();
        views = List.of();
        shown.show(List.of(Words.paragraph(sentence, look.body(), look.ink())));
        revalidate();
    }
}
