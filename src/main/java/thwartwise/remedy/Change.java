package thwartwise.remedy;

import java.util.List;
import thwartwise.boat.Boat;

/**
 * One change that somebody could make.
 *
 * @param topic what it is about; of several changes to one topic only the best is worth telling
 * @param deed what to do, in one line
 * @param how it is done
 * @param cautions what must be minded
 * @param onlyToday whether it changes who is aboard today and nothing of the boat
 * @param boat the boat after it
 */
public record Change(
    String topic,
    String deed,
    String how,
    Effort effort,
    List<String> cautions,
    boolean onlyToday,
    Boat boat) {

  public Change {
    cautions = List.copyOf(cautions);
  }

  /** A change to the boat or its kit. */
  static Change of(
      String topic, String deed, String how, Effort effort, List<String> cautions, Boat boat) {
    return new Change(topic, deed, how, effort, cautions, false, boat);
  }
}
