package thwartwise.crew;

import java.util.List;
import java.util.Locale;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.measure.UnitText;
import thwartwise.rules.RuleSet;

/**
 * Somebody who wants to come along: a name and what they may weigh, dressed and with a life jacket
 * on, from the lightest they may be to the heaviest.
 *
 * @param lightest kg
 * @param heaviest kg
 * @param how where the figures come from, in words
 */
public record NamedPerson(String name, double lightest, double heaviest, UnitText how) {

  /** Clothes and life jacket, kg (judgement), as an adult's figure has it. */
  public static final double CLOTHES = 5;

  public NamedPerson {
    if (!(lightest > 0 && heaviest >= lightest && heaviest < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(name + " weighs " + lightest + " to " + heaviest + " kg");
    }
  }

  /** An adult nobody weighed: anything from the lightest person up to the one planned with. */
  public static NamedPerson adult(String name, PlannedMasses planned) {
    return new NamedPerson(
        name, planned.lightest(), planned.adult(), said("an adult", planned.adult()));
  }

  /** Weighed without clothes and life jacket, which come on top. */
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

  /** A youth nobody weighed, by sex and whole years; see {@link WeightForAge} for why so heavy. */
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

  /** What somebody may weigh, whoever it is. */
  record Range(double lightest, double heaviest) {}

  Range range() {
    return new Range(lightest, heaviest);
  }

  /** What decides whether they find seats: not their names. */
  static List<Range> ranges(List<NamedPerson> members) {
    return members.stream().map(NamedPerson::range).toList();
  }

  /** Whether another one may weigh just the same. */
  boolean isLike(NamedPerson other) {
    return range().equals(other.range());
  }

  /**
   * What people are planned with where nobody was weighed, dressed, kg.
   *
   * @param lightest the lightest person an unnamed adult may turn out to be
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

  /** As the growth tables are split. */
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
