package thwartwise.walk.questions;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import thwartwise.boat.Filling;
import thwartwise.boat.Filling.Seal;
import thwartwise.boat.Filling.SealTest;
import thwartwise.measure.ChoiceReader;
import thwartwise.measured.BoatQuantity;
import thwartwise.measured.PartProperties;
import thwartwise.walk.engine.QuantityQuestions;
import thwartwise.walk.engine.QuestionDefinition;
import thwartwise.walk.engine.QuestionTopic;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.WordQuestions;

/** Questions for the filling of a chamber and the evidence for its seal. */
public record FillingQuestions(Replay replay, QuantityQuestions quantities, LocalDate today) {
  private static final int OLDEST_YEARS = 50;

  public Filling filling(String key, String subject) {
    return filling(key, subject, subject);
  }

  /**
   * The filling.
   *
   * @param subject both of two twins
   * @param first the one of them whose seal is asked for
   */
  public Filling filling(String key, String subject, String first) {
    boolean foam =
        replay.ask(
            WordQuestions.choice(
                    key + ".filling",
                    subject + ", " + PartProperties.FILLING.subject(),
                    ChoiceReader.of(false, "air").or(true, "foam"))
                .worded(PartProperties.FILLING));
    return foam ? foam(key, subject) : air(key, first);
  }

  private Filling foam(String key, String subject) {
    boolean closed =
        replay.ask(
            WordQuestions.yesNo(
                    key + ".closed", subject + ", " + PartProperties.FOAM_KIND.subject())
                .worded(PartProperties.FOAM_KIND)
                .ifUnknown(false, "no")
                .remark(yes -> countsForNothing(yes)));
    boolean fastened =
        replay.ask(
            WordQuestions.yesNo(PartProperties.FOAM_FASTENED, new QuestionTopic(key, subject))
                .ifUnknown(false, "no")
                .remark(yes -> countsForNothing(yes)));
    return new Filling.Foam(closed, fastened);
  }

  private static Optional<String> countsForNothing(boolean good) {
    return good ? Optional.empty() : Optional.of("such foam counts for nothing");
  }

  /** A space full of air, its seal and its test. */
  Filling air(String key, String subject) {
    Seal seal = replay.ask(seal(key, subject));
    return new Filling.Air(
        seal, seal == Seal.PROVEN ? Optional.of(test(key + ".test", subject)) : Optional.empty());
  }

  private static QuestionDefinition<Seal> seal(String key, String subject) {
    return WordQuestions.choice(
            key + ".seal",
            subject + ", " + PartProperties.SEAL.subject(),
            ChoiceReader.of(Seal.PROVEN, Seal.PROVEN.word(), "tested")
                .or(
                    Seal.CLAIMED,
                    Seal.CLAIMED.word(),
                    "untested",
                    "not tested",
                    "never tested",
                    "sealed",
                    "tight",
                    "sealed but never tested",
                    "sealed but not tested",
                    "sealed, not tested",
                    "sealed, never tested")
                .or(Seal.OPEN, Seal.OPEN.word(), "not sealed", "leaks", "no"))
        .worded(PartProperties.SEAL)
        .ifUnknown(Seal.CLAIMED, Seal.CLAIMED.word())
        .remark(FillingQuestions::worth);
  }

  private static Optional<String> worth(Seal seal) {
    return switch (seal) {
      case PROVEN -> Optional.empty();
      case CLAIMED -> Optional.of("it counts for nothing until a leak test is recorded");
      case OPEN -> Optional.of("it counts for nothing");
    };
  }

  private SealTest test(String key, String subject) {
    LocalDate day =
        replay.ask(
            dayOf(key, subject)
                .row(
                    subject + ", leak test",
                    List.of("day", "how", "minutes", "litres in", "by whom")));
    String how = how(key, subject);
    double minutes = minutes(key, subject);
    double litresIn = litresIn(key, subject);
    String by = by(key, subject);
    return new SealTest(
        day,
        how,
        minutes,
        litresIn,
        by,
        litresIn > 0 ? Optional.of(head(key, subject)) : Optional.empty());
  }

  /**
   * The head of water, asked only of a chamber that leaked: the deeper the test, the less it fills
   * in use.
   */
  private double head(String key, String subject) {
    return replay.ask(
        quantities
            .length(key + ".head", subject + ", depth of water")
            .how("From its lowest point up to the water that leaked, inside or outside it.")
            .why("Under a hand of water a leak runs slower than when the boat is swamped.")
            .within(quantities.usual(BoatQuantity.TEST_HEAD))
            .orElse(SealTest.LEAST_HEAD, quantities.show(SealTest.LEAST_HEAD)));
  }

  public LocalDate day(String key, String subject) {
    return replay.ask(dayOf(key, subject));
  }

  private QuestionDefinition<LocalDate> dayOf(String key, String subject) {
    return WordQuestions.day(key + ".date", subject + ", leak test done on", today)
        .how("The day of the test, as written down then.")
        .why("A test is stale after twelve months, or after a repair.")
        .unless(this::impossibleDay)
        .remark(this::stale);
  }

  private Optional<String> impossibleDay(LocalDate day) {
    if (day.isAfter(today)) {
      return Optional.of(
          day + " has not come yet (today is " + today + "). Type the day it was done.");
    }
    return day.isBefore(today.minusYears(OLDEST_YEARS))
        ? Optional.of(day + " is longer ago than such boats last. Type the year again.")
        : Optional.empty();
  }

  private Optional<String> stale(LocalDate day) {
    return SealTest.isStale(day, today)
        ? Optional.of("older than twelve months: it counts for nothing until tested again")
        : Optional.empty();
  }

  private String how(String key, String subject) {
    return replay.ask(
        WordQuestions.remark(key + ".how", subject + ", tested how")
            .how("Such as: water poured in; soapy water and a gentle puff; held under.")
            .why("The record tells the next reader what was tried."));
  }

  private double minutes(String key, String subject) {
    double seconds =
        replay.ask(
            quantities
                .time(key + ".minutes", subject + ", test lasted")
                .how("From filling or puffing to reading off.")
                .why("A seal tried for a moment says little.")
                .within(quantities.usual(BoatQuantity.MINUTES)));
    return seconds / 60;
  }

  private double litresIn(String key, String subject) {
    double cubicMetres =
        replay.ask(
            quantities
                .leaked(key + ".litresIn", subject + ", water that got through")
                .how("What leaked in or out in that time, measured with the jug; none is 0.")
                .why("A test does not prove a chamber that leaks.")
                .within(quantities.usual(BoatQuantity.LEAKED_LITRES)));
    return cubicMetres * 1000;
  }

  public String by(String key, String subject) {
    return replay.ask(
        WordQuestions.remark(key + ".by", subject + ", tested by")
            .how("Who did the test.")
            .why("The record names the person who did it."));
  }
}
