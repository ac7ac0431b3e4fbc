package thwartwise.supposition;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.boat.Place;
import thwartwise.crew.NamedPerson;
import thwartwise.crew.NamedPerson.PlannedMasses;
import thwartwise.measure.Dimension;
import thwartwise.measure.PrintableText;
import thwartwise.measure.QuantityReader;
import thwartwise.measure.QuantityReader.Quantity;
import thwartwise.measure.Reading;
import thwartwise.measure.UnitSystem;
import thwartwise.remedy.NamedChanges.FoamSpot;
import thwartwise.walk.questions.PeopleText;

/**
 * Reads what is to be tried on a boat. The whole grammar, with commas between several:
 *
 * <pre>
 *   KIT at LENGTH            KIT at PLACE
 *   without KIT
 *   VOLUME of foam under PLACE      VOLUME of foam in the bow (or: in the stern)
 *   PEOPLE and PEOPLE        two adults; a girl of 10; Iris 62 kg
 * </pre>
 */
public final class SuppositionText {
  /** Replaces a comma within a name. */
  private static final char WITHIN = '\u0001';

  private static final Pattern WITHOUT = clause("without\\s+(?<kit>.+)");
  private static final Pattern AT = clause("(?<kit>.+?)\\s+at\\s+(?<where>.+)");
  private static final Pattern FOAM =
      clause("(?<volume>.*?)\\s*(?:\\bof\\s+)?(?:closed[- ]cell\\s+)?\\bfoam\\b\\s*(?<where>.*)");
  private static final Pattern UNDER = clause("(?:under|below)\\s+(?<place>.+)");
  private static final Pattern IN_AN_END = clause("in\\s+(?:the\\s+)?(?<end>bow|stern)");
  private static final Pattern AND = clause("\\s+and\\s+");
  private static final Pattern BEFORE_FIGURES = clause("\\D*");

  private final PeopleText people;
  private final NameMatch kit;
  private final NameMatch places;
  private final List<Place> seats;

  public SuppositionText(Boat boat, PlannedMasses planned) {
    this.people = PeopleText.forOneLine(planned, boat.units());
    this.seats = boat.places();
    this.kit = new NameMatch("kit", boat.kit().stream().map(Kit::name).toList());
    this.places = new NameMatch("place", seats.stream().map(Place::name).toList());
  }

  private static Pattern clause(String pattern) {
    return Pattern.compile(pattern, Pattern.CASE_INSENSITIVE);
  }

  /** The words of the grammar, for completion. */
  public static final List<String> WORDS =
      List.of(
          "without", "at", "litres", "of", "foam", "under", "in", "the", "bow", "stern", "adult",
          "boy", "girl", "and");

  /** What is to be tried, in the order typed; the people aboard come last and all together. */
  public Reading<List<Supposition>> read(String typed) {
    List<Supposition> found = new ArrayList<>();
    List<String> aboard = new ArrayList<>();
    for (String clause : clauses(typed)) {
      if (isAboutPeople(clause)) {
        Optional<String> kitNamed = PeoplePhrase.parts(clause).filter(this::isKit).findFirst();
        if (kitNamed.isPresent()) {
          return Reading.refused(isNobody(kitNamed.get()));
        }
        PeoplePhrase.parts(clause).flatMap(PeoplePhrase::each).forEach(aboard::add);
      } else {
        Reading<List<Supposition>> read = change(clause);
        if (read.refusal().isPresent()) {
          return read;
        }
        read.as(found::addAll);
      }
    }
    return found.isEmpty() && aboard.isEmpty()
        ? Reading.refused(unknown(typed))
        : with(found, aboard);
  }

  private Reading<List<Supposition>> with(List<Supposition> found, List<String> aboard) {
    if (aboard.isEmpty()) {
      return Reading.understood(List.copyOf(found), "");
    }
    Reading<List<NamedPerson>> members = people.read(String.join(";", aboard));
    return members.as(
        all ->
            Stream.concat(found.stream(), Stream.of(new Supposition.PeopleAboard(all))).toList());
  }

  /** Splits the text at commas, except at those within a name. */
  private List<String> clauses(String typed) {
    String whole = typed;
    for (String name : Stream.concat(kit.names().stream(), places.names().stream()).toList()) {
      if (name.indexOf(',') >= 0) {
        whole =
            clause(Pattern.quote(name))
                .matcher(whole)
                .replaceAll(Matcher.quoteReplacement(name.replace(',', WITHIN)));
      }
    }
    return PeopleText.split(whole).stream()
        .map(one -> one.replace(WITHIN, ',').strip())
        .filter(one -> !one.isEmpty())
        .toList();
  }

  private static boolean isAboutPeople(String clause) {
    return Stream.of(WITHOUT, AT, FOAM).noneMatch(p -> p.matcher(clause).matches())
        && PeoplePhrase.areIn(clause);
  }

  private Reading<List<Supposition>> change(String clause) {
    Matcher without = WITHOUT.matcher(clause);
    if (without.matches()) {
      return left(without.group("kit"));
    }
    Matcher foam = FOAM.matcher(clause);
    if (foam.matches()) {
      return foam(clause, foam.group("volume"), foam.group("where"));
    }
    Matcher at = AT.matcher(clause);
    return at.matches()
        ? kit.read(at.group("kit")).then(name -> at(clause, name, at.group("where")))
        : Reading.refused(unknown(clause));
  }

  private Reading<List<Supposition>> left(String named) {
    List<Supposition> left = new ArrayList<>();
    for (String one : things(AND.split(named))) {
      Reading<String> name = kit.read(one);
      if (name.refusal().isPresent()) {
        return Reading.refused(name.refusal().get());
      }
      name.as(n -> left.add(new Supposition.KitLeft(n)));
    }
    return Reading.understood(List.copyOf(left), "");
  }

  /** Splits at "and", which may be part of a name: as many words as possible are one thing. */
  private List<String> things(String[] between) {
    List<String> things = new ArrayList<>();
    int from = 0;
    while (from < between.length) {
      int to = between.length;
      while (to > from + 1 && !kit.knows(joined(between, from, to))) {
        to--;
      }
      things.add(joined(between, from, to));
      from = to;
    }
    return things;
  }

  private static String joined(String[] between, int from, int to) {
    return String.join(" and ", List.of(between).subList(from, to));
  }

  private Reading<List<Supposition>> at(String clause, String name, String where) {
    boolean figure = where.chars().anyMatch(Character::isDigit) && !places.knows(where);
    Reading<Double> x =
        figure
            ? quantity(clause, where, Dimension.LENGTH)
            : places.read(where).as(place -> seat(place).x());
    return x.as(along -> List.of(new Supposition.KitAt(name, along)));
  }

  private Place seat(String name) {
    return seats.stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
  }

  private Reading<List<Supposition>> foam(String clause, String volume, String where) {
    return quantity(clause, volume, Dimension.VOLUME)
        .unless(litres -> litres > 0 ? Optional.empty() : Optional.of(noFoam(clause)))
        .then(litres -> spot(clause, where).as(s -> List.of(new Supposition.FoamAdded(litres, s))));
  }

  private Reading<FoamSpot> spot(String clause, String where) {
    Matcher end = IN_AN_END.matcher(where);
    if (end.matches()) {
      boolean bow = end.group("end").equalsIgnoreCase("bow");
      return Reading.understood(bow ? FoamSpot.End.BOW : FoamSpot.End.STERN, "");
    }
    Matcher under = UNDER.matcher(where);
    return under.matches()
        ? places.read(under.group("place")).as(name -> new FoamSpot.Under(seat(name)))
        : Reading.refused(
            "%s does not say where the foam goes. Type under and a place, in the bow or in the stern, such as \"30 litres of foam in the bow\"."
                .formatted(PrintableText.excerpt(clause)));
  }

  private static Reading<Double> quantity(String clause, String figure, Dimension dimension) {
    Reading<Quantity> read = new QuantityReader(dimension, UnitSystem.METRIC).read(figure);
    return read instanceof Reading.Refused<Quantity> refused
        ? Reading.refused("In " + PrintableText.excerpt(clause) + ": " + refused.reason())
        : read.as(Quantity::si);
  }

  private boolean isKit(String part) {
    Matcher name = BEFORE_FIGURES.matcher(part);
    String before = name.lookingAt() ? name.group().strip() : "";
    return before.length() < part.strip().length() && kit.isAlmost(before);
  }

  private static String isNobody(String part) {
    return "%s is kit of this boat and nobody aboard. Say where it goes, such as \"%s at 1.2 m\", or leave it out with without."
        .formatted(PrintableText.excerpt(part), part.replaceAll("\\d.*", "").strip());
  }

  private static String noFoam(String clause) {
    return "%s adds no foam. Type litres above 0.".formatted(PrintableText.excerpt(clause));
  }

  private String unknown(String clause) {
    String thing = kit.names().isEmpty() ? "KIT" : kit.names().get(0);
    String place = places.names().isEmpty() ? "PLACE" : places.names().get(0);
    return "%s is nothing that can be tried. Type \"%s at 1.2 m\", \"without the %s\", \"30 litres of foam under the %s\" or \"two adults and a girl of 10\"; commas part several."
        .formatted(PrintableText.excerpt(clause), thing, thing, place);
  }
}
