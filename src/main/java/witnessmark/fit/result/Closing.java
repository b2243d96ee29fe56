package witnessmark.fit.result;

/**
 * One of the things that bring a piston nearer its head.
 *
 * @param kind which
 * @param millimetres by how much: at the reference speed where it goes with speed, else always; below 0 where it opens
 * @param standard its standard uncertainty, in millimetres
 * @param basis what it rests on, the weakest of what it comes of
 */
public record Closing(Kind kind, double millimetres, double standard, Basis basis) {
    /** What closes. */
    public enum Kind {
        STRETCH(true),
        TAKE_UP(false),
        GROWTH(false),
        BENDING(true);

        private final boolean withSpeed;

        Kind(boolean withSpeed) {
            this.withSpeed = withSpeed;
        }

        /** Whether it goes with the square of the speed. */
        public boolean withSpeed() {
            return withSpeed;
        }
    }

    /** Its amount at a speed that is so many times the reference, in millimetres. */
    public double at(double times) {
        return kind.withSpeed() ? millimetres * times * times : millimetres;
    }

    double standardAt(double times) {
        return kind.withSpeed() ? standard * times * times : standard;
    }
}
