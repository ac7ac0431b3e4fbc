package thwartwise.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import thwartwise.sheet.SheetRun.Asked;
import thwartwise.sheet.SheetSections.SheetSection.SheetField;
import thwartwise.walk.engine.Question;

/** The layout of runs of the walk as sections of the sheet, in the order of the questions. */
final class SheetSections {
  private static final Pattern NUMBERED = Pattern.compile("(.*?)\\.(\\d+)\\.(.+)");

  /** Questions that steer the walk or follow from an answer, and are not measured. */
  private static final Pattern NOT_MEASURED =
      Pattern.compile(
          "way|units|finish|hull\\.(?:weighed|centre|stations|points|alike|looks)|.*\\.any|.*#.*"
              + "|hull\\.outOfLine\\..*|waters\\.sheltered");

  /** A name in quotes, or the kind of a thing whose name is asked for. */
  private static final Pattern NAMED = Pattern.compile(".*\", (.+)|.+, (?=name$)(.+)");

  /** Days, and names that only the template has. */
  private static final List<String> NOT_TO_CHOOSE =
      Stream.concat(Stream.of("today"), SheetTemplate.NAMES.stream()).toList();

  /** More choices than this are only examples. */
  private static final int MOST_CHOICES = 7;

  private final List<Open> sections = new ArrayList<>();

  private SheetSections() {}

  /** Two fields of the same thing that were asked one after the other. */
  private record Neighbours(String earlier, String later) {}

  /**
   * A section that is being built: its fields in the order found, and which field follows which.
   */
  private record Open(
      String kind,
      Map<String, SheetField> fields,
      Set<Neighbours> neighbours,
      List<Map<String, String>> rows) {

    /**
     * The fields in the order of the questions. Two fields that never occur together keep the order
     * in which they were found.
     */
    List<SheetField> ordered() {
      List<SheetField> left = new ArrayList<>(fields.values());
      List<SheetField> ordered = new ArrayList<>();
      while (!left.isEmpty()) {
        SheetField next =
            left.stream().filter(f -> isFree(f, left)).findFirst().orElseGet(() -> left.get(0));
        left.remove(next);
        ordered.add(next);
      }
      return ordered;
    }

    private boolean isFree(SheetField field, List<SheetField> left) {
      return left.stream()
          .noneMatch(other -> neighbours.contains(new Neighbours(other.key(), field.key())));
    }
  }

  /**
   * Lays out the sections.
   *
   * @param runs whose fields are combined, because no single run reaches all of them
   */
  static List<SheetSection> of(List<List<Asked>> runs) {
    SheetSections all = new SheetSections();
    runs.forEach(all::add);
    return all.sections.stream()
        .map(s -> new SheetSection(s.kind(), s.ordered(), s.rows()))
        .toList();
  }

  private void add(List<Asked> run) {
    Optional<Open> section = Optional.empty();
    String before = "";
    String ofThing = "nothing yet";
    for (Asked asked : run) {
      String key = asked.question().key();
      if (NOT_MEASURED.matcher(key).matches()) {
        continue;
      }
      Matcher numbered = NUMBERED.matcher(key);
      boolean thing = numbered.matches();
      String kind = thing ? numbered.group(1) : "";
      Optional<Open> last = section;
      if (last.isEmpty() || !last.get().kind().equals(kind)) {
        section = Optional.of(section(kind, last));
        ofThing = "nothing yet";
      }
      Open open = section.get();
      String field = thing ? numbered.group(3) : key;
      open.fields().computeIfAbsent(field, f -> field(f, asked.question(), thing));
      String one = thing ? kind + "." + numbered.group(2) : kind;
      if (one.equals(ofThing)) {
        open.neighbours().add(new Neighbours(before, field));
      }
      before = field;
      ofThing = one;
      int number = thing ? Integer.parseInt(numbered.group(2)) : 1;
      while (open.rows().size() < number) {
        open.rows().add(new HashMap<>());
      }
      asked.known().ifPresent(typed -> open.rows().get(number - 1).put(field, typed));
    }
  }

  /** The existing section of this name, or a new one after the one before. */
  private Open section(String kind, Optional<Open> last) {
    int from = last.map(sections::indexOf).orElse(-1) + 1;
    Optional<Open> found =
        sections
            .subList(from, kind.isEmpty() ? Math.min(from + 1, sections.size()) : sections.size())
            .stream()
            .filter(s -> s.kind().equals(kind))
            .findFirst();
    if (found.isPresent()) {
      return found.get();
    }
    Open made = new Open(kind, new LinkedHashMap<>(), new HashSet<>(), new ArrayList<>());
    sections.add(from, made);
    return made;
  }

  private static SheetField field(String key, Question question, boolean thing) {
    String label = thing ? bare(question.subject()) : question.subject();
    List<String> choices =
        question.choices().size() <= MOST_CHOICES
                && question.choices().stream().noneMatch(NOT_TO_CHOOSE::contains)
            ? question.choices()
            : List.of();
    return new SheetField(key, label, choices);
  }

  /** A subject without the thing in front of it, which the table does not need. */
  private static String bare(String subject) {
    Matcher named = NAMED.matcher(subject);
    return named.matches()
        ? Optional.ofNullable(named.group(1)).orElseGet(() -> named.group(2))
        : subject;
  }

  /**
   * A part of the sheet: single answers below each other, or a table of things of one kind.
   *
   * @param kind the common beginning of its keys; blank for single answers
   * @param fields what is asked, in the order of the walk
   * @param rows known answers by field; one row for single answers
   */
  record SheetSection(String kind, List<SheetField> fields, List<Map<String, String>> rows) {
    SheetSection {
      fields = List.copyOf(fields);
      rows = List.copyOf(rows);
    }

    boolean isTable() {
      return !kind.isEmpty();
    }

    /**
     * A field of the sheet.
     *
     * @param key of its question, without the number of the thing
     * @param label what to write down
     * @param choices words to choose from; none where a figure is written
     */
    record SheetField(String key, String label, List<String> choices) {}
  }
}
