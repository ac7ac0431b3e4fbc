package thwartwise.sheet;

import java.util.List;
import java.util.Map;

/**
 * A part of the sheet: single answers one below the other, or a table of things of one kind.
 *
 * @param kind what the keys of its questions begin with; blank for single answers
 * @param fields what is asked, in the order of the walk
 * @param things what is known, by field; of single answers there is one
 */
record SheetSection(String kind, List<SheetField> fields, List<Map<String, String>> things) {
  SheetSection {
    fields = List.copyOf(fields);
    things = List.copyOf(things);
  }

  boolean isTable() {
    return !kind.isEmpty();
  }

  /**
   * @param key of its question, without the number of the thing
   * @param label what to write down
   * @param choices words to choose from; none where a figure is written
   */
  record SheetField(String key, String label, List<String> choices) {}
}
