package thwartwise.shell;

import static thwartwise.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import thwartwise.archive.Workspace;
import thwartwise.boat.Boat;
import thwartwise.boat.BoxBoat;
import thwartwise.boat.PointAnswer;
import thwartwise.files.boat.BoatFile;
import thwartwise.measure.PrintableText;
import thwartwise.record.SampleRecords;
import thwartwise.shell.TodayCommand.TodayQuestions;
import thwartwise.today.TodayPage.Answered;
import thwartwise.today.TodayVerdict;
import thwartwise.today.TodayVerdict.Point;
import thwartwise.walk.OddInputs;

/** Two hundred odd answers at the questions of today and of a look: nothing breaks or is lost. */
class OddAnswersTest {
  private static final List<String> ODD = OddInputs.all();
  private static final Boat BOAT = BoxBoat.of(4, 1.5, 0.6).place("thwart", 2, 0.3, 0.3, 2).boat();

  @TempDir Path folder;

  private static void harmless(List<String> said) {
    assertThat(said).allMatch(line -> line.length() < 1000);
    assertThat(said.stream().flatMapToInt(String::codePoints)).allMatch(PrintableText::isHarmless);
  }

  @Test
  void at_each_point_of_today_an_odd_answer_counts_nothing() {
    List<Point> points = TodayVerdict.of(SampleRecords.report(), BOAT, TestShell.TODAY).points();
    TodayQuestions questions = TodayQuestions.of(points);
    for (int at = 0; at < points.size(); at++) {
      for (String odd : ODD) {
        List<String> typed = new ArrayList<>(Collections.nCopies(points.size(), "yes"));
        typed.add(at, odd);
        TypedConversation conversation = new TypedConversation(typed);
        List<Answered> answers = questions.asked(conversation, BOAT);
        harmless(conversation.said());
        // Refused, it is asked again; taken, it is a no or a don't know.
        assertThat(answers.get(at).yes()).isEqualTo(conversation.isAllTyped());
        assertThat(answers).filteredOn(a -> !a.yes()).hasSizeLessThanOrEqualTo(1);
      }
    }
  }

  @Test
  void at_a_look_an_odd_answer_is_refused_or_kept_as_a_short_note() {
    Workspace workspace = new Workspace(folder);
    Path file = workspace.saveBoat(DemoCommand.asOf(TestShell.TODAY));
    List<String> typed = new ArrayList<>(ODD);
    typed.removeIf(odd -> odd.strip().equalsIgnoreCase("leave"));
    // As a note, in one line with the answer and in a line of its own.
    ODD.forEach(odd -> typed.addAll(List.of("no, " + odd, "back", "no", odd, "back")));
    TestShell shell = TestShell.open().typing(typed.toArray(String[]::new)).typing("leave");
    int exit =
        shell.run("look", "--boat", file.toString(), "--by", "Iris", "--folder", folder.toString());
    assertThat(exit).as(shell.err()).isLessThanOrEqualTo(1);
    assertThat(BoatFile.read(file).pointAnswers())
        .isNotEmpty()
        .extracting(PointAnswer::note)
        .allMatch(note -> note.length() <= 200);
  }
}
