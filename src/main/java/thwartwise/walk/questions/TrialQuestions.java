package thwartwise.walk.questions;

import java.time.LocalDate;
import java.util.Optional;
import thwartwise.boat.TrialSeen;
import thwartwise.measure.Dimension;
import thwartwise.measured.BoatQuantity;
import thwartwise.walk.engine.Entry;
import thwartwise.walk.engine.PlausibleRange;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.Tape;
import thwartwise.walk.engine.WordQuestions;

/** What was seen today of the boat full of water in knee-deep water, people sitting in it. */
public record TrialQuestions(Replay replay, Tape tape, LocalDate today) {
  private static final int MOST_PEOPLE = 20;

  /** Between these lies what people weigh on the mean of a crew, dressed, kg (judgement). */
  private static final double LIGHT = 15;

  private static final double HEAVY = 150;

  public Optional<TrialSeen> seen() {
    boolean done =
        replay.ask(
            WordQuestions.yesNo("trial.done", "Was the trial in knee-deep water done today?")
                .how(
                    "yes: filled to the brim, those who go sat in it ten minutes, jackets on,",
                    "and somebody looked. The page of the boat tells it step by step.")
                .why("It can show that the boat holds these people up, today and no longer.")
                .orElse(false, "no"));
    return done ? Optional.of(told()) : Optional.empty();
  }

  private TrialSeen told() {
    int people =
        replay.ask(
            WordQuestions.whole("trial.people", "How many sat in it full of water", 1, MOST_PEOPLE)
                .how("Count those who sat in it all the time.")
                .why("More than were seen may not go."));
    double mass = mass(people);
    double minutes = minutes();
    boolean level =
        replay.ask(
            badly("trial.level", "Level, off the bottom, all the time?")
                .how(
                    "yes: no end and no side went down, a stick went through under it, and no",
                    "chamber had taken water. Anything else, or not looked at: no.")
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
                .why("What was seen has somebody's name to it."));
    return new TrialSeen(today, by, people, mass, minutes, level, heads);
  }

  private double mass(int people) {
    return replay.ask(
        tape.carried("trial.mass", "All of them together, as they were dressed")
            .how("Each on the bathroom scales, dressed and with the jacket; add it up.")
            .why("More weight than was seen may not go.")
            .within(usual(people))
            .remark(mass -> each(mass, people)));
  }

  /**
   * Pounds for kilograms and one person for two show in what each would weigh (judgement). What
   * lies outside is not taken however firmly somebody insists: more of it would flatter.
   */
  private PlausibleRange usual(int people) {
    return new PlausibleRange(
        Dimension.MASS,
        tape.system(),
        LIGHT * people,
        HEAVY * people,
        "mass of so many people",
        LIGHT * people,
        HEAVY * people);
  }

  /** So that pounds for kilograms are seen where no range can tell. */
  private Optional<String> each(double mass, int people) {
    return people > 1
        ? Optional.of("that is " + tape.system().show(mass / people, Dimension.MASS) + " each")
        : Optional.empty();
  }

  private double minutes() {
    double seconds =
        replay.ask(
            tape.time("trial.minutes", "How long they sat in it full of water")
                .how("By the clock, from full to the brim until the first got up.")
                .why("Under ten minutes it counts for nothing.")
                .within(tape.usual(BoatQuantity.SEEN_MINUTES)));
    return seconds / 60;
  }

  private static Entry<Boolean> badly(String key, String subject) {
    return WordQuestions.yesNo(key, subject)
        .orElse(false, "no, it went badly")
        .remark(yes -> yes ? Optional.empty() : Optional.of("it went badly, so nobody goes in it"));
  }
}
