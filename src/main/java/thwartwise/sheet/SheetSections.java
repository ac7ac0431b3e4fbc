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

/** Runs of the walk laid out as parts of the sheet, in the order in which they were asked. */
final class SheetSections {
  private static final Pattern NUMBERED = Pattern.compile("(.*?)\\.(\\d+)\\.(.+)");

  /** What only steers the walk, or is asked because of an answer. */
  private static final Pattern NOT_MEASURED =
      Pattern.compile(
          "way|units|finish|hull\\.(?:weighed|centre|stations|points|alike|looks)|.*\\.any|.*#.*"
              + "|hull\\.outOfLine\\..*|waters\\.sheltered");

  /** The name of a thing in quotes, or of a kind of things whose name is asked for. */
  private static final Pattern NAMED = Pattern.compile(".*\", (.+)|.+, (?=name$)(.+)");

  /** Days, and names that are only the template's. */
  private static final List<String> NOT_TO_CHOOSE =
      Stream.concat(Stream.of("today"), SheetTemplate.NAMES.stream()).toList();

  /** More choices than these are a list of examples. */
  private static final int MOST_CHOICES = 7;

  private final List<Open> sections = new ArrayList<>();

  private SheetSections() {}

  /** One field was asked right after the other of the same thing. */
  private record Neighbours(String earlier, String later) {}

  /** A section in the making: its fields as they turn up, and which of them follow each other. */
  private record Open(
      String kind,
      Map<String, SheetField> fields,
      Set<Neighbours> neighbours,
      List<Map<String, String>> rows) {

    /** What any thing was asked earlier stands earlier; two that never meet, as they turned up. */
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
   * @param runs whose fields are put together: what one run does not come to, another one does
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

  /** The section there is already, or a new one behind the one before. */
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

  /** A subject names the thing first, which the table does not need. */
  private static String bare(String subject) {
    Matcher named = NAMED.matcher(subject);
    return named.matches()
        ? Optional.ofNullable(named.group(1)).orElseGet(() -> named.group(2))
        : subject;
  }

  /**
   * A part of the sheet: single answers one below the other, or a table of things of one kind.
   *
   * @param kind what the keys of its questions begin with; blank for single answers
   * @param fields what is asked, in the order of the walk
   * @param rows what is known, by field; of single answers there is one
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
     * @param key of its question, without the number of the thing
     * @param label what to write down
     * @param choices words to choose from; none where a figure is written
     */
    record SheetField(String key, String label, List<String> choices) {}
  }
}
