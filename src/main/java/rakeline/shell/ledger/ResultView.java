package rakeline.shell.ledger;

import java.awt.event.MouseListener;
import java.util.List;
import java.util.Optional;
import javax.swing.JTextArea;
import rakeline.engine.Outcome;
import rakeline.engine.Result;
import rakeline.engine.State;
import rakeline.figure.CautionsSaid;
import rakeline.figure.Chart;
import rakeline.figure.Figure;
import rakeline.figure.Table;
import rakeline.shell.figures.FigureView;
import rakeline.shell.figures.TableKeys;
import rakeline.shell.look.Look;
import rakeline.shell.look.Pile;
import rakeline.shell.look.Words;

/** What a row produced: its message, what it printed, its value or its figure. */
final class ResultView extends Pile {
    private final transient Look look;
    private final transient MouseListener pressed;
    private final JTextArea message;
    private final JTextArea details;
    private final JTextArea printed;
    private final JTextArea value;
    private final TableKeys keys;
    private Optional<FigureView> figure = Optional.empty();
    private static final Outcome NOTHING = Outcome.bare("", State.OUT_OF_DATE, "");

    private transient Outcome shown = NOTHING;

    /**
     * @param pressed hears of a press anywhere on it
     */
    ResultView(Look look, MouseListener pressed) {
        super(look.space(2));
        this.look = look;
        this.pressed = pressed;
        message = Words.paragraph("", look.body(), look.ink());
        keys = new TableKeys(look, part -> figure.ifPresent(view -> view.show(part)));
        details = Words.paragraph("", look.digits(12), look.soft());
        printed = Words.paragraph("", look.digits(12), look.ink());
        value = Words.paragraph("", look.body(), look.ink());
        for (JTextArea words : List.of(message, details, printed, value)) {
            words.addMouseListener(pressed);
            add(words);
        }
        show(NOTHING, new CautionsSaid());
    }

    /**
     * Shows how the row stands.
     *
     * @param said the cautions of the rows above
     */
    void show(Outcome standing, CautionsSaid said) {
        shown = standing;
        String[] parts = standing.message().split("\n", 2);
        put(message, sentence(standing));
        put(details, parts.length > 1 ? parts[1].strip() : "");
        put(printed, standing.printed().stripTrailing());
        standing.result().ifPresentOrElse(result -> showResult(standing.name(), result, said), this::showNone);
    }

    private static String sentence(Outcome standing) {
        String first = standing.message().split("\n", 2)[0];
        return standing.state() == State.WAITING && first.isEmpty() ? "Waits until it is run." : first;
    }

    /** For one who does not see the row beside it. */
    private static String named(Outcome standing) {
        String sentence = sentence(standing);
        return sentence.isEmpty() || standing.name().isEmpty() ? sentence : standing.name() + ": " + sentence;
    }

    private static void put(JTextArea area, String words) {
        if (!area.getText().equals(words)) {
            area.setText(words);
        }
        area.setVisible(!words.isEmpty());
    }

    private void showResult(String name, Result result, CautionsSaid said) {
        if (result instanceof Result.Shown some) {
            put(value, "");
            showFigure(said.next(some.figure()));
        } else if (result instanceof Result.Value some) {
            value.setFont(Double.isNaN(some.number()) ? look.body() : look.value());
            put(value, some.said(name));
            value.setToolTipText(value.getText().equals(some.text()) ? null : some.text());
            dropFigure();
        } else if (result instanceof Result.Text some) {
            value.setFont(look.body());
            put(value, some.text());
            dropFigure();
        }
    }

    private void showFigure(Figure some) {
        FigureView view = figure.orElseGet(this::addFigure);
        if (some instanceof Table table) {
            keys.show(table);
        } else {
            keys.setVisible(false);
            view.show(some);
        }
    }

    private FigureView addFigure() {
        FigureView view = new FigureView(look);
        view.addMouseListener(pressed);
        figure = Optional.of(view);
        add(view);
        add(keys);
        return view;
    }

    private void showNone() {
        put(value, "");
        dropFigure();
    }

    private void dropFigure() {
        figure.ifPresent(this::remove);
        remove(keys);
        figure = Optional.empty();
    }

    boolean hasFigure() {
        return figure.isPresent();
    }

    Optional<FigureView> figure() {
        return figure;
    }

    /** What help on it is about: the first quantity shown, or figures. */
    String topic() {
        return figure.flatMap(FigureView::figure)
                .flatMap(some -> some instanceof Chart chart
                        ? chart.panels().stream()
                                .map(panel -> panel.quantity().key())
                                .findFirst()
                        : Optional.empty())
                .orElse("figures");
    }

    boolean isEmpty() {
        return heightFor(look.px(400)) == 0;
    }

    /** Whether there is something for a reader who sees no code: a figure, or that it failed. */
    boolean isForReaders() {
        return hasFigure() || !message.getText().isEmpty();
    }

    /** For one who reads the page: the figure, and where something failed the message and whose it is. */
    void readOnly(boolean reading) {
        put(message, reading ? named(shown) : sentence(shown));
        value.setVisible(!reading && !value.getText().isEmpty());
        printed.setVisible(!reading && !printed.getText().isEmpty());
        details.setVisible(!reading && !details.getText().isEmpty());
    }

    Outcome shown() {
        return shown;
    }
}
