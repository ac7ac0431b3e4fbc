package thwartwise.crew;

import java.util.List;
import java.util.Locale;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.measure.UnitText;
import thwartwise.rules.RuleSet;

/**
 * A person who wants to come along: a name and the possible masses, dressed and with a life jacket
 * on, from the least to the greatest.
 *
 * @param lightest kg
 * @param heaviest kg
 * @param how source of the figures, in words
 */
public record NamedPerson(String name, double lightest, double heaviest, UnitText how) {

  /** Clothes and life jacket, kg (judgement), as in an adult's figure. */
  public static final double CLOTHES = 5;

  public NamedPerson {
    if (!(lightest > 0 && heaviest >= lightest && heaviest < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(name + " weighs " + lightest + " to " + heaviest + " kg");
    }
  }

  /** An adult nobody weighed: any mass from the lightest person up to the one planned with. */
  public static NamedPerson adult(String name, PlannedMasses planned) {
    return new NamedPerson(
        name, planned.lightest(), planned.adult(), said("an adult", planned.adult()));
  }

  /** Weighed without clothes and life jacket, which are added. */
  public static NamedPerson weighed(String name, double mass) {
    double dressed = mass + CLOTHES;
    return new NamedPerson(
        name,
        dressed,
        dressed,
        said("weighed, and {5 kg|11 lb} for clothes and life jacket", dressed));
  }

  /** Weighed with everything on. */
  public static NamedPerson weighedDressed(String name, double mass) {
    return new NamedPerson(name, mass, mass, said("weighed dressed, life jacket on", mass));
  }

  /**
   * A youth nobody weighed, by sex and whole years; {@link WeightForAge} gives the reason for so
   * heavy a figure.
   */
  public static NamedPerson youth(String name, Sex sex, int age) {
    double heaviest = WeightForAge.heaviest(sex, age) + CLOTHES;
    return new NamedPerson(
        name,
        WeightForAge.lightest(sex, age),
        heaviest,
        said("a heavy " + sex.word() + " of " + age + " and {5 kg|11 lb} for clothes", heaviest));
  }

  /** What is needed is rounded up. */
  private static UnitText said(String words, double heaviest) {
    String metric = String.format(Locale.ROOT, "%.0f kg", Math.ceil(heaviest - 1e-9));
    return UnitText.of(
        words
            + ": up to {"
            + metric
            + "|"
            + UnitFormat.METRIC.other().mass(heaviest, Side.UP)
            + "}");
  }

  /** The possible masses of a person. */
  record Range(double lightest, double heaviest) {}

  Range range() {
    return new Range(lightest, heaviest);
  }

  /** The ranges of people, which decide whether they find seats; their names do not. */
  static List<Range> ranges(List<NamedPerson> members) {
    return members.stream().map(NamedPerson::range).toList();
  }

  /** Whether another person has the same range. */
  boolean isLike(NamedPerson other) {
    return range().equals(other.range());
  }

  /**
   * The masses for planning where nobody was weighed, dressed, kg.
   *
   * @param lightest the least mass of an unnamed adult
   * @param adult what an unnamed adult counts
   * @param heaviest nobody heavier is seated
   */
  public record PlannedMasses(double lightest, double adult, double heaviest) {

    public static PlannedMasses of(RuleSet rules) {
      return new PlannedMasses(
          rules.value("lightest-person"),
          rules.value("design-person"),
          rules.value("heaviest-person"));
    }
  }

  /** The sexes of the growth tables. */
  public enum Sex {
    BOY("boy"),
    GIRL("girl");

    private final String word;

    Sex(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }
}
