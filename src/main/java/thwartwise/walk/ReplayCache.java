package thwartwise.walk;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import thwartwise.boat.Boat;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Replay;
import thwartwise.walk.engine.ReplayResult;

/** The latest replays of one script: every typed line needs the same ones several times. */
final class ReplayCache {
  /**
   * The number of replays to remember. A row is read value by value, and each value asks about the
   * answers before it again.
   */
  private static final int REMEMBERED = 8;

  private final Function<Replay, Boat> script;

  /** Newest first; replaced as a whole, so that threads may share it. */
  private volatile List<PastRun> past = List.of();

  private record PastRun(List<Answer> answers, ReplayResult played) {}

  ReplayCache(Function<Replay, Boat> script) {
    this.script = script;
  }

  /** The replay of these answers. */
  ReplayResult play(List<Answer> answers) {
    List<PastRun> before = past;
    for (PastRun run : before) {
      if (run.answers().size() == answers.size() && run.answers().equals(answers)) {
        return run.played();
      }
    }
    ReplayResult played =
        before.stream()
            .max(Comparator.comparingInt(run -> alike(run.answers(), answers)))
            .map(nearest -> nearest.played().again(script, answers))
            .orElseGet(() -> ReplayResult.of(script, answers));
    past =
        Stream.concat(Stream.of(new PastRun(List.copyOf(answers), played)), before.stream())
            .limit(REMEMBERED)
            .toList();
    return played;
  }

  /**
   * How many answers two runs begin alike. Two people, or two tests, may walk by turns: each goes
   * on from the run that is nearest to it.
   */
  private static int alike(List<Answer> one, List<Answer> other) {
    int most = Math.min(one.size(), other.size());
    int alike = 0;
    while (alike < most && one.get(alike).equals(other.get(alike))) {
      alike++;
    }
    return alike;
  }
}
