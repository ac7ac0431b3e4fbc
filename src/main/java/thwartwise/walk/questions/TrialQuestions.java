package thwartwise.walk.questions;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.ObservedTrial;
import thwartwise.boat.Place;
import thwartwise.crew.NamedPerson;
import thwartwise.crew.NamedPerson.Sex;
import thwartwise.crew.WeightForAge;
import thwartwise.measure.Dimension;
import thwartwise.measure.PrintableText;
import thwartwise.measure.Reading;
import thwartwise.measured.BoatQuantity;
import thwartwise.walk.engine.PlausibleRange;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/** Questions for a trial today: people in the flooded boat, in knee-deep water. */
public record TrialQuestions(
    Replay replay, QuantityQuestions quantities, LocalDate today, List<Place> places) {
  /** A person older than this is no child here. */
  private static final int OLDEST_CHILD = 17;

  private static final String EXPECTED_AGES = "whole years, such as 6, 9, or none";

  /** The usual mean mass of a dressed crew is at least this, kg (judgement). */
  private static final double LIGHT = 15;

  private static final double HEAVY = 150;

  /**
   * A greater mean mass of adults needs confirmation, because it is often pounds, kg (judgement).
   */
  private static final double USUAL = 100;

  public Optional<ObservedTrial> observedTrial() {
    boolean done =
        replay.ask(
            WordQuestions.yesNo("trial.done", "Was the trial in knee-deep water done today?")
                .how(
                    "yes: filled to the brim, those who go sat in it ten minutes, jackets on,",
                    "and somebody looked. The page of the boat tells it step by step.")
                .why("It can show that the boat holds these people up, today and no longer.")
                .orElse(false, "no"));
    return done ? Optional.of(trialDetails()) : Optional.empty();
  }

  /** The details of a trial that took place. */
  public ObservedTrial trialDetails() {
    int people = people();
    List<Integer> children = children(people);
    List<String> seats = seats(people);
    double mass = mass(people, children);
    double minutes = minutes();
    boolean level =
        replay.ask(
            badly("trial.level", "Level, off the bottom, all the time?")
                .how(
                    "yes: a stick went through under it, no chamber took water, and no end or side",
                    "went down: also not when you leaned, when each got out first, and when each",
                    "was left in it alone. In doubt: no.")
                .why("A boat that lies over or takes water soon holds nobody."));
    boolean heads =
        replay.ask(
            badly("trial.heads", "Every head clear of the water?")
                .how("yes: nobody was held up by another, nobody floated out. In doubt: no.")
                .why("Cold hands do not hold on for long."));
    String by =
        replay.ask(
            WordQuestions.remark("trial.by", "Who saw it")
                .how("Who stood by and looked.")
                .why("The record names the person who saw it."));
    return new ObservedTrial(today, by, people, mass, minutes, level, heads, seats);
  }

  private int people() {
    int room = places.stream().mapToInt(Place::people).sum();
    return replay.ask(
        WordQuestions.whole("trial.people", "How many sat in it full of water", 1, room)
            .how("Count those who sat in it all the time.")
            .why("No more people than in the trial may go."));
  }

  private List<Integer> children(int people) {
    return replay
        .ask(
            childAges("trial.children", "Ages of the children among them")
                .how("Whole years of whoever is not grown up, such as 6, 9; none when all are.")
                .why("Pounds typed for kilograms show in what a child can weigh.")
                .unless(ages -> tooMany(ages, people))
                .orWord("none", "none"))
        .orElse(List.of());
  }

  private static Optional<String> tooMany(List<Integer> ages, int people) {
    return ages.size() <= people
        ? Optional.empty()
        : Optional.of(
            "That is %d ages, and %d sat in it. Type the ages of the children alone."
                .formatted(ages.size(), people));
  }

  /** The number of people at each place; a number that follows from the others is not asked. */
  private List<String> seats(int people) {
    List<String> seats = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      Place place = places.get(i);
      int left = people - seats.size();
      int elsewhere = places.subList(i + 1, places.size()).stream().mapToInt(Place::people).sum();
      int least = Math.max(0, left - elsewhere);
      int most = Math.min(left, place.people());
      int here = least < most ? here(i, place, least, most) : least;
      seats.addAll(Collections.nCopies(here, place.name()));
    }
    return seats;
  }

  private int here(int number, Place place, int least, int most) {
    return replay.ask(
        WordQuestions.whole(
                "trial.seat." + (number + 1),
                "How many of them on " + WordQuestions.quoted(place.name()),
                least,
                most)
            .how("As they sat when it was full of water; 0 when nobody sat there.")
            .why("A seat that stayed empty shows nothing."));
  }

  private double mass(int people, List<Integer> children) {
    return replay.ask(
        quantities
            .carried("trial.mass", "All of them together, as they were dressed")
            .how("Each on the bathroom scales, dressed and with the jacket; add it up.")
            .why("No more weight than in the trial may go.")
            .within(usual(people, children))
            .remark(mass -> each(mass, people)));
  }

  /**
   * Doubts a mass for each person that suggests pounds or a wrong number of people. A guess outside
   * the range is refused even when the person insists, because a greater mass would flatter.
   */
  private PlausibleRange usual(int people, List<Integer> children) {
    double adultsMost = USUAL * (people - children.size());
    double most = adultsMost + children.stream().mapToDouble(TrialQuestions::heavyChild).sum();
    return new PlausibleRange(
        Dimension.MASS,
        quantities.system(),
        LIGHT * people,
        most,
        "mass of so many people",
        LIGHT * people,
        HEAVY * people);
  }

  /** Shows the mass for each person, so that pounds are noticed where no range can tell. */
  private Optional<String> each(double mass, int people) {
    return people > 1
        ? Optional.of(
            "that is " + quantities.system().show(mass / people, Dimension.MASS) + " each")
        : Optional.empty();
  }

  private double minutes() {
    double seconds =
        replay.ask(
            quantities
                .time("trial.minutes", "How long they sat in it full of water")
                .how("By the clock, from full to the brim until the first got up.")
                .why("Under ten minutes it counts for nothing.")
                .within(quantities.usual(BoatQuantity.SEEN_MINUTES)));
    return seconds / 60;
  }

  private static QuestionDefinition<Boolean> badly(String key, String subject) {
    return WordQuestions.yesNo(key, subject)
        .orElse(false, "no, it went badly")
        .remark(yes -> yes ? Optional.empty() : Optional.of("it went badly, so nobody goes in it"));
  }

  /** The ages of children as they are typed, and the greatest mass of a child of an age. */
  static QuestionDefinition<List<Integer>> childAges(String key, String subject) {
    return QuestionDefinition.of(key, subject, "years", EXPECTED_AGES, TrialQuestions::readAges);
  }

  private static Reading<List<Integer>> readAges(String typed) {
    List<String> words =
        Arrays.stream(typed.strip().split("[\\s,;]+|\\band\\b"))
            .filter(word -> !word.isBlank())
            .toList();
    boolean years = words.stream().allMatch(w -> w.matches("\\d{1,2}"));
    List<Integer> ages = years ? words.stream().map(Integer::valueOf).toList() : List.of();
    return ages.isEmpty() || ages.stream().anyMatch(age -> age > OLDEST_CHILD)
        ? Reading.refused(
            PrintableText.excerpt(typed)
                + " is no list of ages up to 17. Type "
                + EXPECTED_AGES
                + ".")
        : Reading.understood(ages, String.join(", ", words));
  }

  /**
   * The mass of a heavy child of that age, dressed, kg; younger children count as the youngest of
   * the table.
   */
  static double heavyChild(int age) {
    int known = Math.max(age, WeightForAge.YOUNGEST);
    double bare =
        Math.max(WeightForAge.heaviest(Sex.BOY, known), WeightForAge.heaviest(Sex.GIRL, known));
    return Math.ceil(bare + NamedPerson.CLOTHES);
  }
}
