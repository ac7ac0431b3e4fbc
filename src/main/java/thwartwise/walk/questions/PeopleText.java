package thwartwise.walk.questions;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import thwartwise.crew.NamedPerson;
import thwartwise.crew.NamedPerson.PlannedMasses;
import thwartwise.crew.NamedPerson.Sex;
import thwartwise.crew.WeightForAge;
import thwartwise.measure.Dimension;
import thwartwise.measure.NameReader;
import thwartwise.measure.PrintableText;
import thwartwise.measure.QuantityReader;
import thwartwise.measure.Reading;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.measure.UnitSystem;

/**
 * Reads a list of people: {@code Iris 62 kg, Tom 80 dressed, boy 12, girl 10, adult}. A bare number
 * after a name is kilograms or, in a boat in feet, pounds; after boy or girl it is whole years. The
 * reply names each person with the greatest mass, so that pounds read as kilograms show.
 */
public final class PeopleText {
  private static final int MOST = 8;
  private static final double LIGHTEST = 8;

  /** A comma between two figures, which may be a decimal comma. */
  private static final Pattern BETWEEN = Pattern.compile(";|,(?!\\d)|(?<!\\d),");

  /**
   * A word for a child. A bare number after it means years to one reader and kilograms to another.
   */
  private static final Pattern CHILD =
      Pattern.compile(
          "(?:an?\\s+)?(?:child|children|kid|son|daughter|baby|toddler)\\s+(?:of\\s+)?\\d{1,3}");

  private static final Pattern YOUTH = Pattern.compile("(boy|girl)\\s+(?:of\\s+)?(\\d{1,3})");
  private static final Pattern WEIGHED =
      Pattern.compile("(?<name>\\D*?\\D)\\s+(?<mass>\\d.*?)(?<dressed>\\s+dressed)?");

  private static final Pattern BARE = Pattern.compile("\\d+(?:[.,]\\d+)?");

  private final PlannedMasses planned;
  private final UnitFormat units;
  private final boolean unitWanted;

  private PeopleText(PlannedMasses planned, UnitSystem units, boolean unitWanted) {
    this.planned = planned;
    this.units = new UnitFormat(units);
    this.unitWanted = unitWanted;
  }

  /**
   * For a person who confirms the reading before it counts.
   *
   * @param units in which a bare number after a name is a mass
   */
  public PeopleText(PlannedMasses planned, UnitSystem units) {
    this(planned, units, false);
  }

  /**
   * For a list that is answered at once. In a boat in feet a bare weight is refused, because it may
   * be pounds or kilograms and the wrong one flatters.
   */
  public static PeopleText forOneLine(PlannedMasses planned, UnitSystem units) {
    return new PeopleText(planned, units, !units.isMetric());
  }

  public Reading<List<NamedPerson>> read(String typed) {
    List<NamedPerson> members = new ArrayList<>();
    for (String one : split(typed)) {
      if (!one.isBlank()) {
        Reading<NamedPerson> member = member(one.strip(), members);
        if (member.refusal().isPresent()) {
          return Reading.refused(member.refusal().get());
        }
        member.as(members::add);
      }
    }
    return several(members, typed);
  }

  /** The parts between commas and semicolons. A comma between two figures is a decimal comma. */
  public static List<String> split(String typed) {
    return List.of(BETWEEN.split(typed));
  }

  private Reading<List<NamedPerson>> several(List<NamedPerson> members, String typed) {
    if (members.isEmpty()) {
      return Reading.refused(
          "%s names nobody. Type who wants to come, such as %s."
              .formatted(PrintableText.excerpt(typed), example()));
    }
    return members.size() > MOST
        ? Reading.refused(
            "%d people are named; at most %d can be seated here. Name fewer."
                .formatted(members.size(), MOST))
        : Reading.understood(List.copyOf(members), understood(members));
  }

  private String understood(List<NamedPerson> members) {
    double all = members.stream().mapToDouble(NamedPerson::heaviest).sum();
    String each =
        members.stream()
            .map(member -> member.name() + " " + mass(member.heaviest()))
            .collect(Collectors.joining("; "));
    return "at the most, dressed: " + each + (members.size() > 1 ? "; together " + mass(all) : "");
  }

  private String mass(double kilograms) {
    return units.mass(kilograms, Side.UP).replace(UnitFormat.TIED, " ");
  }

  private String example() {
    return "\"Iris " + units.either("62 kg", () -> "137 lb") + ", boy 12, girl 10, adult\"";
  }

  private String word() {
    return units.either("kilograms", () -> "pounds");
  }

  private Reading<NamedPerson> member(String one, List<NamedPerson> before) {
    String plain = one.toLowerCase(Locale.ROOT);
    if (plain.equals("adult")) {
      return Reading.understood(NamedPerson.adult(free("adult", before), planned), "");
    }
    Matcher youth = YOUTH.matcher(plain);
    if (youth.matches()) {
      return youth(youth, one, before);
    }
    if (CHILD.matcher(plain).matches()) {
      return Reading.refused(yearsOrMass(one));
    }
    Matcher weighed = WEIGHED.matcher(one);
    return weighed.matches() ? weighed(weighed, before) : Reading.refused(noWeight(one));
  }

  private String noWeight(String one) {
    return "%s has no weight. Type %s after a name, an age after boy or girl, or adult, such as %s."
        .formatted(PrintableText.excerpt(one), word(), example());
  }

  private String yearsOrMass(String one) {
    return "%s may be years or %s. Type boy or girl before an age, or %s behind a weight, such as %s."
        .formatted(PrintableText.excerpt(one), word(), units.either("kg", () -> "lb"), example());
  }

  private Reading<NamedPerson> youth(Matcher youth, String one, List<NamedPerson> before) {
    Sex sex = youth.group(1).equals("boy") ? Sex.BOY : Sex.GIRL;
    int age = Integer.parseInt(youth.group(2));
    return WeightForAge.covers(age)
        ? Reading.understood(
            NamedPerson.youth(free(sex.word() + " of " + age, before), sex, age), "")
        : Reading.refused(
            "%s: weights by age are known from %d to %d years. Weigh them and type the %s, such as \"%s %s\"."
                .formatted(
                    PrintableText.excerpt(one),
                    WeightForAge.YOUNGEST,
                    WeightForAge.OLDEST,
                    word(),
                    sex.word(),
                    units.either("31 kg", () -> "69 lb")));
  }

  private Reading<NamedPerson> weighed(Matcher weighed, List<NamedPerson> before) {
    if (unitWanted && BARE.matcher(weighed.group("mass")).matches()) {
      return Reading.refused(
          "%s may be pounds or kilograms. Type lb or kg behind the weight, such as %s."
              .formatted(PrintableText.excerpt(weighed.group()), example()));
    }
    boolean dressed = weighed.group("dressed") != null;
    return new NameReader(30)
        .read(weighed.group("name"))
        .unless(name -> taken(name, before))
        .then(
            name ->
                new QuantityReader(Dimension.MASS, units.system())
                    .read(weighed.group("mass"))
                    .as(mass -> named(name, mass.si(), dressed)))
        .unless(this::unlikely);
  }

  private static NamedPerson named(String name, double mass, boolean dressed) {
    double positive = Math.max(mass, Double.MIN_NORMAL);
    return dressed
        ? NamedPerson.weighedDressed(name, positive)
        : NamedPerson.weighed(name, positive);
  }

  private Optional<String> unlikely(NamedPerson member) {
    double most = planned.heaviest();
    if (member.heaviest() >= LIGHTEST && member.heaviest() <= most) {
      return Optional.empty();
    }
    return Optional.of(
        String.format(
            Locale.ROOT,
            "%s at %s, dressed: from %.0f to %.0f %s can be seated here. Weigh them again, or leave"
                + " them out.",
            PrintableText.excerpt(member.name()),
            scales(member.heaviest()),
            Math.ceil(LIGHTEST / unit()),
            Math.floor(most / unit()),
            units.either("kg", () -> "lb")));
  }

  /** The units for a refusal; there is no cautious side. */
  private String scales(double kilograms) {
    return String.format(
        Locale.ROOT, "%.0f %s", kilograms / unit(), units.either("kg", () -> "lb"));
  }

  private double unit() {
    return units.system().isMetric() ? 1 : UnitFormat.POUND;
  }

  private static Optional<String> taken(String name, List<NamedPerson> before) {
    return isFree(name, before)
        ? Optional.empty()
        : Optional.of(
            "Two people are called %s. Give each a name of their own."
                .formatted(PrintableText.excerpt(name)));
  }

  private static boolean isFree(String name, List<NamedPerson> before) {
    return before.stream().noneMatch(m -> m.name().equals(name));
  }

  /** The name, with a number behind it if it is taken. */
  private static String free(String name, List<NamedPerson> before) {
    String found = name;
    for (int i = 2; !isFree(found, before); i++) {
      found = name + ", number " + i;
    }
    return found;
  }
}
