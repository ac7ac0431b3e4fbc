package thwartwise.report;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.measure.UnitFormat;
import thwartwise.picture.PictureFacts;

/** The words of the boat from above. */
record PlanWords(PictureFacts.Plan shown, UnitFormat units) {
  static final String TITLE = "From above: places, people, kit and chambers";

  String alternative() {
    return "The boat from above, bow to the right, with "
        + AboardWords.of(shown.aboard(), units)
        + ". Places to sit: "
        + shown.places()
        + ". Pieces of kit: "
        + shown.kit()
        + ". Chambers: "
        + chambers();
  }

  private String chambers() {
    String all =
        Stream.of(
                counted("counts ", shown.counting()),
                counted("only claimed ", shown.claimed()),
                counted("open ", shown.open()))
            .filter(state -> !state.isEmpty())
            .collect(Collectors.joining(", "));
    return all.isEmpty() ? "none" : all;
  }

  private static String counted(String state, int chambers) {
    return chambers == 0 ? "" : state + chambers;
  }

  String caption() {
    return Stream.of(who(), kitLeftOut())
        .filter(sentence -> !sentence.isEmpty())
        .collect(Collectors.joining(" "));
  }

  private String who() {
    return shown.aboard().isNobody()
        ? "Drawn with nobody aboard."
        : "Drawn with "
            + AboardWords.of(shown.aboard(), units)
            + ", in the seating that comes nearest to a limit. A thick bar or box is a place for"
            + " people, as far as the middle of a person gets. A black square is kit.";
  }

  private String kitLeftOut() {
    return shown.kitIsNamed() ? "" : "There is too much kit to name it here.";
  }
}
