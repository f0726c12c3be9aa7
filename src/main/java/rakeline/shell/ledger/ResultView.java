package rakeline.shell.ledger;

import java.awt.Component;
import java.awt.event.MouseListener;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
import rakeline.shell.look.Heights;
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
    private final JTextArea age;
    private final Pile said;
    private Optional<FigureView> figure = Optional.empty();
    private static final Outcome NOTHING = Outcome.bare("", State.OUT_OF_DATE, "");

    private transient Outcome shown = NOTHING;
    private boolean old;

    /**
     * @param pressed hears of a press anywhere on it
     */
    ResultView(Look look, MouseListener pressed) {
        super(look.space(2));
        this.look = look;
        this.pressed = pressed;
        message = Words.paragraph("", look.body(), look.ink());
        age = Words.paragraph("", look.body(), look.ink());
        keys = new TableKeys(look, part -> figure.ifPresent(view -> view.show(part)));
        details = Words.paragraph("", look.digits(12), look.soft());
        printed = Words.paragraph("", look.digits(12), look.ink());
        value = Words.paragraph("", look.body(), look.ink());
        said = new Pile(look.space(1));
        said.setBackground(look.card());
        age.setName("age of the figure");
        List.of(age, message, details).forEach(said::add);
        List.of(said, printed, value).forEach(this::add);
        List.of(age, message, details, printed, value).forEach(words -> words.addMouseListener(pressed));
        show(NOTHING, Optional.empty(), false, new CautionsSaid());
    }

    /**
     * Shows how the row stands.
     *
     * @param before the figure of its last run, where it has no result now
     * @param nowOld whether what is shown is not of now
     * @param above the cautions of the rows above
     */
    void show(Outcome standing, Optional<Figure> before, boolean nowOld, CautionsSaid above) {
        shown = standing;
        String[] parts = standing.message().split("\n", 2);
        put(message, sentence(standing));
        put(details, parts.length > 1 ? parts[1].strip() : "");
        put(printed, standing.printed().stripTrailing());
        standing.result()
                .or(() -> before.map(Result.Shown::new))
                .ifPresentOrElse(result -> showResult(standing.name(), result, above), this::showNone);
        age(nowOld && hasFigure());
    }

    /** A figure that is not of now stays in its place, faded, and what is said of it stands upon it. */
    private void age(boolean nowOld) {
        old = nowOld;
        figure.ifPresent(view -> view.fade(old));
        put(age, old ? Words.ofBefore(shown.state().words()) : "");
        said.setOpaque(old);
        said.setBorder(old ? look.room(1, 2, 1, 2) : null);
        revalidate();
        repaint();
    }

    @Override
    protected boolean isApart(Component component) {
        return component == said && (old || sayings().noneMatch(Component::isVisible));
    }

    private Stream<JTextArea> sayings() {
        return Stream.of(age, message, details);
    }

    @Override
    public int heightFor(int width) {
        return old ? Math.max(super.heightFor(width), Heights.of(said, width)) : super.heightFor(width);
    }

    @Override
    public void doLayout() {
        super.doLayout();
        if (old) {
            int top = figure.map(Component::getY).orElse(0);
            int height = Heights.of(said, getWidth());
            said.setBounds(0, Math.min(top, Math.max(0, getHeight() - height)), getWidth(), height);
        } else if (isApart(said)) {
            said.setBounds(0, 0, 0, 0);
        }
    }

    /** What is said of an old figure stands upon it. */
    @Override
    public boolean isOptimizedDrawingEnabled() {
        return false;
    }

    private static String sentence(Outcome standing) {
        String first = standing.message().split("\n", 2)[0];
        return standing.state() == State.WAITING && first.isEmpty() ? "Runs only when you run it (F5)." : first;
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

    private void showResult(String name, Result result, CautionsSaid above) {
        if (result instanceof Result.Shown some) {
            put(value, "");
            showFigure(above.next(some.figure()));
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
