package thwartwise.geometry;

/** Immutable stretch along one axis, metres; an end left out is infinite. */
public record Span(double from, double to) {
  public static final Span ALL = new Span(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

  public Span {
    if (!(from <= to)) {
      throw new IllegalArgumentException(
          "A span runs from the lesser to the greater: " + from + " to " + to);
    }
  }

  public boolean contains(double value) {
    return from <= value && value <= to;
  }

  public double middle() {
    return (from + to) / 2;
  }

  public double length() {
    return to - from;
  }

  /** The same stretch seen in a mirror at zero. */
  public Span mirrored() {
    return new Span(-to, -from);
  }

  public boolean overlaps(Span o) {
    return from < o.to && o.from < to;
  }

  /** What both have in common; only for spans that overlap. */
  public Span common(Span o) {
    return new Span(Math.max(from, o.from), Math.min(to, o.to));
  }
}
