package thwartwise.report;

import thwartwise.measure.UnitFormat;
import thwartwise.picture.MissingPicture;
import thwartwise.picture.PictureFacts;
import thwartwise.picture.SwampedRest;

/**
 * The words of a picture.
 *
 * @param title what it shows, in a few words
 * @param alternative the same for somebody who cannot see it
 * @param caption what to make of it
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
    MomentWords words = new MomentWords((PictureFacts.Moments) facts, units);
    return new PictureWords(MomentWords.TITLE, words.alternative(), words.caption());
  }

  /** Why a picture could not be drawn. */
  public static String of(MissingPicture missing) {
    if (missing instanceof MissingPicture.Unusable unusable) {
      return "No picture could be drawn from these measurements: " + unusable.message();
    }
    if (missing instanceof MissingPicture.OfSwamped swamped) {
      return swamped(swamped.rest());
    }
    return "How it heels is not drawn, because no way was found in which it floats upright";
  }

  private static String swamped(SwampedRest rest) {
    return switch (rest) {
      case NOT_ASSESSED -> "How it lies full of water was not found, so it is not drawn";
      case SINKS -> "Full of water it sinks, so it is not drawn";
      case NOT_UPRIGHT, UPRIGHT -> "Full of water it does not stay upright, so it is not drawn";
    };
  }
}
