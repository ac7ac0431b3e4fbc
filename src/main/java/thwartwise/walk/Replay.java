package thwartwise.walk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import thwartwise.boat.Boat;
import thwartwise.measure.Reading;
import thwartwise.measure.UnitSystem;

/**
 * The script asks, the answers kept so far reply. The first question without a fitting answer ends
 * the run; so finding the next question, resuming and going back are all the same thing.
 */
final class Replay {
  private final Map<String, Answer> kept = new HashMap<>();
  private final List<Given> given = new ArrayList<>();
  private Optional<SoFar> soFar = Optional.empty();

  Replay(List<Answer> answers) {
    answers.forEach(answer -> kept.putIfAbsent(answer.question(), answer));
  }

  <T> T ask(Entry<T> entry) {
    Answer answer = kept.get(entry.key());
    if (answer == null) {
      throw new Unanswered(entry, Optional.empty());
    }
    Reading<T> reading = entry.read(answer.typed());
    if (reading instanceof Reading.Refused<T> refused) {
      throw new Unanswered(entry, Optional.of(refused.reason()));
    }
    Reading.Understood<T> understood = (Reading.Understood<T>) reading;
    given.add(new Given(entry.question(), answer, understood.text(), entry.governsTheRest()));
    return understood.value();
  }

  /** What is known of the boat by now, whatever is asked next. */
  void known(Boat boat, UnitSystem units) {
    soFar = Optional.of(new SoFar(boat, units));
  }

  Optional<SoFar> soFar() {
    return soFar;
  }

  /** What was guessed and not measured, each a sentence. */
  List<String> guesses() {
    return given.stream()
        .filter(g -> isGuess(g.understood()))
        .map(g -> "Guessed, not measured: " + g.line() + basis(g.understood()) + ".")
        .toList();
  }

  private static String basis(String understood) {
    return understood.contains(Tape.COUNTED) ? " (judgement)" : "";
  }

  private static boolean isGuess(String understood) {
    return understood.contains(Tape.GUESS) || understood.endsWith(Tape.HEAVY);
  }

  List<Given> given() {
    return List.copyOf(given);
  }
}
