package rakeline.handling;

/** A matrix of two rows and two columns, lean first, steer second. */
public record Square(double a11, double a12, double a21, double a22) {
    public Square plus(Square other) {
        return new Square(a11 + other.a11, a12 + other.a12, a21 + other.a21, a22 + other.a22);
    }

    public Square times(double factor) {
        return new Square(factor * a11, factor * a12, factor * a21, factor * a22);
    }

    public double determinant() {
        return a11 * a22 - a12 * a21;
    }

    /** What det(this + x · other) has before x: the mixed term. */
    double mixed(Square other) {
        return a11 * other.a22 + a22 * other.a11 - a12 * other.a21 - a21 * other.a12;
    }

    public double[][] rows() {
        return new double[][] {{a11, a12}, {a21, a22}};
    }
}
