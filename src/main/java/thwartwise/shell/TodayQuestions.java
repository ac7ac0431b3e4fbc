package thwartwise.shell;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import thwartwise.boat.Boat;
import thwartwise.measure.PrintableText;
import thwartwise.measure.Reading;
import thwartwise.measure.YesOrNo;
import thwartwise.page.LineWrap;
import thwartwise.page.TextForm;
import thwartwise.today.TodayPage;
import thwartwise.today.TodayPage.Answered;
import thwartwise.today.TodayVerdict.Point;
import thwartwise.walk.Walk;
import thwartwise.walk.engine.Answer;
import thwartwise.walk.engine.Entry;

/** The points of today, each a question as in the walk. Anything but yes leaves it open. */
record TodayQuestions(List<Point> points) {
  private static final String UNKNOWN = "don't know";
  private static final String NOT_ONE = " is not one of them. Type yes, no or don't know.";

  /** Every answer there is; the points nobody came to are not answered, so they are open. */
  List<Answered> asked(Conversation conversation, Boat boat) {
    List<Entry<?>> entries =
        IntStream.range(0, points.size()).<Entry<?>>mapToObj(this::entry).toList();
    List<Answer> answers =
        new BriefConversation(conversation, Walk.asking(boat, entries)).asked().answers();
    return IntStream.range(0, points.size()).mapToObj(i -> answered(i, answers)).toList();
  }

  private Entry<Boolean> entry(int i) {
    Point point = points.get(i);
    String[] question =
        TodayPage.question(i + 1, points.size(), point).lines().toArray(String[]::new);
    return Entry.of(
            "today." + (i + 1),
            point.name(),
            "yes, no, " + UNKNOWN,
            "yes, no or " + UNKNOWN,
            TodayQuestions::read)
        .choices(List.of("yes", "no", UNKNOWN))
        .how(question)
        .why(LineWrap.lines(TodayPage.why(point), "", "", TextForm.WIDTH).toArray(String[]::new))
        .orElse(false, UNKNOWN);
  }

  private static Reading<Boolean> read(String typed) {
    return YesOrNo.read(typed)
        .refusal()
        .map(no -> Reading.<Boolean>refused(PrintableText.excerpt(typed) + NOT_ONE))
        .orElseGet(() -> YesOrNo.read(typed));
  }

  private Answered answered(int i, List<Answer> answers) {
    Entry<Boolean> entry = entry(i);
    return answers.stream()
        .filter(answer -> answer.question().equals(entry.key()))
        .flatMap(answer -> understood(entry, answer).stream())
        .findFirst()
        .map(said -> new Answered(points.get(i), said.value(), said.text()))
        .orElseGet(() -> new Answered(points.get(i), false, "not answered"));
  }

  private static Optional<Reading.Understood<Boolean>> understood(
      Entry<Boolean> entry, Answer answer) {
    return entry.read(answer.typed()) instanceof Reading.Understood<Boolean> said
        ? Optional.of(said)
        : Optional.empty();
  }
}
