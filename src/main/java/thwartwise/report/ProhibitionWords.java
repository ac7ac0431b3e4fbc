package thwartwise.report;

import thwartwise.remedy.Changes.Prohibition;

/** What must never be done to a boat, in words. */
public final class ProhibitionWords {
  private ProhibitionWords() {}

  public static String of(Prohibition never) {
    if (never instanceof Prohibition.SealVented sealing) {
      return "Never seal the "
          + sealing.chamber()
          + ": it holds the "
          + sealing.kit()
          + ", and gas and heat must get out. Vent it high up";
    }
    return ((Prohibition.AsRecorded) never).words();
  }
}
