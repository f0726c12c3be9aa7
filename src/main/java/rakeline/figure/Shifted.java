package rakeline.figure;

import java.util.List;
import rakeline.figure.Drawing.Circle;
import rakeline.figure.Drawing.Dimension;
import rakeline.figure.Drawing.Handle;
import rakeline.figure.Drawing.Label;
import rakeline.figure.Drawing.Mark;
import rakeline.figure.Drawing.Path;
import rakeline.figure.Drawing.Point;

/** Marks moved on the sheet, in millimetres. */
record Shifted(double dx, double dy) {
    List<Mark> all(List<Mark> marks) {
        return dx == 0 && dy == 0 ? marks : marks.stream().map(this::one).toList();
    }

    private Mark one(Mark mark) {
        if (mark instanceof Path path) {
            return new Path(
                    path.points().stream().map(this::point).toList(),
                    path.closed(),
                    path.filled(),
                    path.ink(),
                    path.overlay());
        }
        if (mark instanceof Circle circle) {
            return new Circle(point(circle.centre()), circle.radius(), circle.filled(), circle.ink(), circle.overlay());
        }
        if (mark instanceof Handle handle) {
            return handle(handle);
        }
        return mark instanceof Dimension dimension ? dimension(dimension) : label((Label) mark);
    }

    private Handle handle(Handle handle) {
        return new Handle(
                point(handle.at()),
                handle.key(),
                handle.label(),
                handle.value(),
                handle.perMmX(),
                handle.perMmY(),
                handle.overlay());
    }

    private Dimension dimension(Dimension dimension) {
        return new Dimension(
                point(dimension.from()),
                point(dimension.to()),
                dimension.offset(),
                dimension.text(),
                dimension.key(),
                dimension.ink(),
                dimension.overlay());
    }

    private Label label(Label label) {
        return new Label(point(label.at()), label.text(), label.ink(), label.overlay());
    }

    private Point point(Point point) {
        return new Point(point.x() + dx, point.y() + dy);
    }
}
