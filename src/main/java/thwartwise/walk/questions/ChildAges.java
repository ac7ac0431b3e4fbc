package thwartwise.walk.questions;

import java.util.Arrays;
import java.util.List;
import thwartwise.crew.NamedPerson;
import thwartwise.crew.Sex;
import thwartwise.crew.WeightForAge;
import thwartwise.measure.QuotedText;
import thwartwise.measure.Reading;
import thwartwise.walk.engine.Entry;

/** Ages of children, as they are typed, and what a child of an age weighs at most. */
final class ChildAges {
  /** Whoever is older is no child here. */
  private static final int OLDEST = 17;

  private static final String EXPECTED = "whole years, such as 6, 9, or none";

  private ChildAges() {}

  static Entry<List<Integer>> entry(String key, String subject) {
    return Entry.of(key, subject, "years", EXPECTED, ChildAges::read);
  }

  private static Reading<List<Integer>> read(String typed) {
    List<String> words =
        Arrays.stream(typed.strip().split("[\\s,;]+|\\band\\b"))
            .filter(word -> !word.isBlank())
            .toList();
    boolean years = words.stream().allMatch(w -> w.matches("\\d{1,2}"));
    List<Integer> ages = years ? words.stream().map(Integer::valueOf).toList() : List.of();
    return ages.isEmpty() || ages.stream().anyMatch(age -> age > OLDEST)
        ? Reading.refused(
            QuotedText.of(typed) + " is no list of ages up to 17. Type " + EXPECTED + ".")
        : Reading.understood(ages, String.join(", ", words));
  }

  /** A heavy child of that age, dressed; one too young for the table counts as its youngest, kg. */
  static double heavy(int age) {
    int known = Math.max(age, WeightForAge.YOUNGEST);
    double bare =
        Math.max(WeightForAge.heaviest(Sex.BOY, known), WeightForAge.heaviest(Sex.GIRL, known));
    return Math.ceil(bare + NamedPerson.CLOTHES);
  }
}
