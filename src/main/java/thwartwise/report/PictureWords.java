package thwartwise.report;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import thwartwise.measure.QuantityText;
import thwartwise.measure.Rounding;
import thwartwise.measure.UnitFormat;
import thwartwise.measure.UnitFormat.Side;
import thwartwise.picture.PictureFacts;
import thwartwise.picture.PictureFacts.CrewAboard;
import thwartwise.picture.PictureFacts.SwampedRest;
import thwartwise.picture.Pictures.MissingPicture;

/**
 * The words of a picture.
 *
 * @param title what it shows, in a few words
 * @param alternative the same for a reader who cannot see it
 * @param caption what it means
 */
public record PictureWords(String title, String alternative, String caption) {

  public static PictureWords of(PictureFacts facts, UnitFormat units) {
    if (facts instanceof PictureFacts.Plan plan) {
      PlanWords words = new PlanWords(plan, units);
      return new PictureWords(PlanWords.TITLE, words.alternative(), words.caption());
    }
    if (facts instanceof PictureFacts.Profile profile) {
      SideWords words = new SideWords(profile, units);
      return new PictureWords(SideWords.TITLE, words.alternative(), words.caption());
    }
    if (facts instanceof PictureFacts.FullOfWater full) {
      FullOfWaterWords words = new FullOfWaterWords(full, units);
      return new PictureWords(FullOfWaterWords.TITLE, words.alternative(), words.caption());
    }
    if (facts instanceof PictureFacts.Section section) {
      SectionWords words = new SectionWords(section, units);
      return new PictureWords(words.title(), words.alternative(), words.caption());
    }
    if (facts instanceof PictureFacts.Changed changed) {
      ChangedWords words = new ChangedWords(changed, units);
      return new PictureWords(ChangedWords.TITLE, words.alternative(), words.caption());
    }
    MomentCurveWords words = new MomentCurveWords((PictureFacts.Moments) facts, units);
    return new PictureWords(MomentCurveWords.TITLE, words.alternative(), words.caption());
  }

  /** Why a picture could not be drawn. */
  public static String of(MissingPicture missing) {
    if (missing instanceof MissingPicture.Unusable unusable) {
      return "No picture could be drawn from these measurements: " + unusable.message();
    }
    if (missing instanceof MissingPicture.OfSwamped swamped) {
      return swamped(swamped.rest());
    }
    return "Its heel is not drawn, because it was not found to float upright";
  }

  /** Heels below this are not mentioned, rad. */
  private static final double LEVEL = Math.toRadians(1);

  private static String heeled(double heel) {
    return Math.abs(heel) > LEVEL ? ", heeled " + degrees(heel) : "";
  }

  /** Whole degrees, rounded up, on either side. */
  private static String degrees(double heel) {
    return Rounding.up(Math.toDegrees(Math.abs(heel)), 0) + "\u00a0degrees";
  }

  private static String swamped(SwampedRest rest) {
    return switch (rest) {
      case NOT_ASSESSED -> "It is not drawn full of water, because no position of rest was found";
      case SINKS -> "Full of water, it sinks, so it is not drawn";
      case NOT_UPRIGHT, UPRIGHT -> "Full of water, it does not stay upright, so it is not drawn";
    };
  }

  /** The words of the plan. */
  private record PlanWords(PictureFacts.Plan shown, UnitFormat units) {
    static final String TITLE = "From above: places, people, kit and chambers";

    String alternative() {
      return "The boat from above, bow to the right, with "
          + occupants(shown.aboard(), units)
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
      return shown.aboard().isEmpty()
          ? "Drawn with nobody aboard."
          : "Drawn with "
              + occupants(shown.aboard(), units)
              + ", in the seating that comes nearest to a limit. A thick bar or box shows where the"
              + " middle of a person can be. A black square is kit.";
    }

    private String kitLeftOut() {
      return shown.kitIsNamed() ? "" : "There is too much kit to name all of it here.";
    }
  }

  /** The words of the side view. */
  private record SideWords(PictureFacts.Profile shown, UnitFormat units) {
    static final String TITLE = "From the side: how deep it floats";

    String alternative() {
      return "The boat from its starboard side, bow to the right. Waterlines: "
          + String.join("; ", shown.waterlines())
          + ". "
          + swamped();
    }

    String caption() {
      return "Dotted line: empty, with its kit. "
          + (shown.aboard().isEmpty()
              ? ""
              : "Full line: loaded, with " + occupants(shown.aboard(), units) + ". ")
          + "The figure is the height of the lowest edge where water can come in above the water. "
          + (shown.aboard().isEmpty() ? "No loaded line: nobody is aboard. " : "")
          + notDrawn("Empty", shown.empty())
          + (shown.aboard().isEmpty() ? "" : notDrawn("Loaded", shown.loaded()))
          + swamped();
    }

    private static String notDrawn(String state, boolean found) {
      return found
          ? ""
          : state + " no way was found in which it floats upright, so no line is drawn for it. ";
    }

    private String swamped() {
      return switch (shown.swamped()) {
        case NOT_ASSESSED -> "No position of rest was found for it full of water.";
        case SINKS -> "Full of water, it sinks, so no line is drawn.";
        case NOT_UPRIGHT -> "Full of water, it does not stay upright, so no line is drawn.";
        case UPRIGHT ->
            "Broken line: full of water, with "
                + occupants(shown.aboard(), units)
                + heeled(shown.heel())
                + ".";
      };
    }
  }

  /** The words of the boat before a change and after it. */
  private record ChangedWords(PictureFacts.Changed shown, UnitFormat units) {
    static final String TITLE = "Full of water, before and after";

    String alternative() {
      return "The boat full of water from its starboard side, bow to the right, the water level;"
          + " above as it is, below after the change. "
          + caption();
    }

    String caption() {
      return DeedWords.of(shown.deed(), units).deed()
          + ". With "
          + occupants(shown.aboard(), units)
          + ", full of water: today "
          + lies(shown.before())
          + ", afterwards "
          + lies(shown.after())
          + ". Hatched: what lifts it.";
    }

    private static String lies(SwampedRest rest) {
      return switch (rest) {
        case UPRIGHT -> "as it is drawn";
        case SINKS -> "it sinks";
        case NOT_ASSESSED, NOT_UPRIGHT -> "it rolls over";
      };
    }
  }

  /** The words of the boat full of water. */
  private record FullOfWaterWords(PictureFacts.FullOfWater shown, UnitFormat units) {
    static final String TITLE = "Full of water, from the side";

    String alternative() {
      return "The boat full of water, from its starboard side, bow to the right, the water level. "
          + caption();
    }

    String caption() {
      return "As it lies full of water with "
          + occupants(shown.aboard(), units)
          + heeled(shown.heel())
          + ". Hatched: what lifts it.";
    }
  }

  /** Who is drawn aboard, in words. */
  static String occupants(CrewAboard aboard, UnitFormat units) {
    return aboard.isEmpty()
        ? "nobody aboard"
        : QuantityText.people(aboard.people())
            + " of "
            + units.mass(aboard.each(), Side.UP)
            + " aboard";
  }
}
