package thwartwise;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static thwartwise.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchRule;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import thwartwise.shell.Main;

/**
 * Packages depend only downward, and each outside library stays in the one package that needs it.
 */
class ArchitectureTest {
  private static final List<String> TOP_DOWN =
      List.of(
          "shell",
          "sheet",
          "supposition",
          "walk",
          "walk.borrowed",
          "walk.questions",
          "walk.stations",
          "walk.engine",
          "archive",
          "files.report",
          "today",
          "report",
          "picture",
          "files.rules",
          "files.boat",
          "json",
          "record",
          "inspection",
          "advice",
          "proof",
          "spread",
          "crew",
          "remedy",
          "plausibility",
          "checks",
          "loadcase",
          "rules",
          "checklist",
          "passage",
          "afloat",
          "measured",
          "boat",
          "electrics",
          "hull",
          "page",
          "measure",
          "geometry",
          "uncertainty");

  /** What each package may use of ours, itself aside. Everything not named here is forbidden. */
  private static final Map<String, Set<String>> MAY_USE =
      Map.ofEntries(
          Map.entry("uncertainty", Set.of()),
          Map.entry("geometry", Set.of()),
          Map.entry("measure", Set.of()),
          Map.entry("page", Set.of("measure")),
          Map.entry("hull", Set.of("geometry", "measure")),
          Map.entry("electrics", Set.of()),
          Map.entry("passage", Set.of("boat", "electrics", "hull", "geometry")),
          Map.entry("boat", Set.of("electrics", "hull", "geometry", "measure")),
          Map.entry("afloat", Set.of("boat", "hull", "geometry", "measure")),
          Map.entry("checklist", Set.of("electrics", "boat", "hull", "geometry", "measure")),
          Map.entry("rules", Set.of("afloat", "boat", "hull", "geometry", "measure")),
          Map.entry("remedy", Set.of("boat", "hull", "geometry", "measure")),
          Map.entry("loadcase", Set.of("rules", "afloat", "boat", "hull", "geometry", "measure")),
          Map.entry(
              "checks",
              Set.of(
                  "loadcase",
                  "rules",
                  "afloat",
                  "electrics",
                  "boat",
                  "hull",
                  "geometry",
                  "measure")),
          Map.entry(
              "plausibility",
              Set.of(
                  "checks", "loadcase", "rules", "afloat", "boat", "hull", "geometry", "measure")),
          Map.entry(
              "crew",
              Set.of(
                  "plausibility",
                  "checks",
                  "loadcase",
                  "rules",
                  "afloat",
                  "boat",
                  "hull",
                  "geometry",
                  "measure")),
          Map.entry(
              "proof",
              Set.of(
                  "spread", "loadcase", "rules", "afloat", "boat", "hull", "geometry", "measure")),
          Map.entry(
              "spread",
              Set.of(
                  "uncertainty",
                  "crew",
                  "checks",
                  "loadcase",
                  "rules",
                  "afloat",
                  "boat",
                  "hull",
                  "geometry",
                  "measure")),
          Map.entry(
              "advice", Set.of("crew", "remedy", "checks", "loadcase", "boat", "hull", "measure")),
          Map.entry(
              "inspection",
              Set.of(
                  "advice",
                  "spread",
                  "uncertainty",
                  "crew",
                  "remedy",
                  "plausibility",
                  "checks",
                  "loadcase",
                  "rules",
                  "checklist",
                  "afloat",
                  "electrics",
                  "boat",
                  "hull",
                  "geometry",
                  "measure")),
          Map.entry(
              "picture",
              Set.of(
                  "page",
                  "inspection",
                  "crew",
                  "remedy",
                  "loadcase",
                  "afloat",
                  "boat",
                  "hull",
                  "geometry",
                  "measure")),
          Map.entry(
              "today",
              Set.of(
                  "report",
                  "page",
                  "record",
                  "inspection",
                  "crew",
                  "checks",
                  "loadcase",
                  "rules",
                  "boat",
                  "hull",
                  "measure")),
          Map.entry("record", below("record")),
          Map.entry("measured", Set.of("electrics", "boat", "hull", "measure", "geometry")),
          Map.entry("json", Set.of("measured", "measure")),
          Map.entry(
              "files.boat",
              Set.of(
                  "measured",
                  "json",
                  "plausibility",
                  "boat",
                  "electrics",
                  "hull",
                  "geometry",
                  "measure")),
          Map.entry(
              "files.rules",
              Set.of("measured", "json", "rules", "checklist", "boat", "geometry", "measure")),
          Map.entry(
              "files.report",
              Set.of(
                  "advice",
                  "spread",
                  "crew",
                  "measured",
                  "report",
                  "files.boat",
                  "json",
                  "inspection",
                  "remedy",
                  "checks",
                  "loadcase",
                  "rules",
                  "afloat",
                  "boat",
                  "hull",
                  "geometry",
                  "measure")),
          Map.entry("archive", below("archive")),
          Map.entry("report", below("report")),
          Map.entry(
              "walk",
              Set.of(
                  "electrics",
                  "crew",
                  "measured",
                  "walk.borrowed",
                  "walk.stations",
                  "walk.questions",
                  "walk.engine",
                  "inspection",
                  "plausibility",
                  "rules",
                  "checklist",
                  "afloat",
                  "boat",
                  "hull",
                  "geometry",
                  "measure")),
          Map.entry(
              "walk.borrowed",
              Set.of(
                  "crew",
                  "measured",
                  "walk.questions",
                  "walk.engine",
                  "inspection",
                  "plausibility",
                  "rules",
                  "checklist",
                  "afloat",
                  "boat",
                  "hull",
                  "geometry",
                  "measure")),
          Map.entry(
              "walk.questions",
              Set.of(
                  "electrics",
                  "report",
                  "crew",
                  "measured",
                  "walk.engine",
                  "inspection",
                  "plausibility",
                  "rules",
                  "checklist",
                  "afloat",
                  "boat",
                  "hull",
                  "geometry",
                  "measure")),
          Map.entry("walk.stations", Set.of("hull", "measure")),
          Map.entry("walk.engine", Set.of("measured", "boat", "hull", "measure")),
          Map.entry(
              "supposition",
              Set.of(
                  "crew",
                  "walk.questions",
                  "inspection",
                  "remedy",
                  "rules",
                  "boat",
                  "hull",
                  "measure",
                  "geometry")),
          Map.entry(
              "sheet",
              Set.of(
                  "walk",
                  "walk.questions",
                  "walk.engine",
                  "report",
                  "picture",
                  "measured",
                  "boat",
                  "electrics",
                  "hull",
                  "page",
                  "measure",
                  "geometry")),
          Map.entry("shell", below("shell")));

  /** Plain Java: the pictures, and everything from the inspection down. */
  private static final List<String> CORE =
      Stream.concat(Stream.of("picture"), below("record").stream()).toList();

  private static final int MOST_IN_A_CYCLE = 6;

  private static final JavaClasses CLASSES = ProgramClasses.ALL;

  private static Set<String> below(String name) {
    return Set.copyOf(TOP_DOWN.subList(TOP_DOWN.indexOf(name) + 1, TOP_DOWN.size()));
  }

  static List<String> packages() {
    return TOP_DOWN;
  }

  @ParameterizedTest
  @MethodSource("packages")
  void a_package_uses_only_the_packages_it_may_know(String name) {
    String[] forbidden =
        TOP_DOWN.stream()
            .filter(other -> !other.equals(name) && !MAY_USE.get(name).contains(other))
            .map(ArchitectureTest::exactly)
            .toArray(String[]::new);
    if (forbidden.length > 0) {
      check(
          noClasses()
              .that()
              .resideInAPackage(exactly(name))
              .should()
              .dependOnClassesThat(resideInAnyPackage(forbidden)));
    }
  }

  @Test
  void only_what_reads_and_writes_files_knows_jackson() {
    check(
        noClasses()
            .that(
                resideOutsideOfPackages(
                    classesOf("json"), classesOf("files"), classesOf("archive")))
            .should()
            .dependOnClassesThat(resideInAnyPackage("tools.jackson..", "com.fasterxml..")));
  }

  @Test
  void only_the_page_knows_how_paper_is_made() {
    check(
        noClasses()
            .that(resideOutsideOfPackage(classesOf("page")))
            .should()
            .dependOnClassesThat(
                resideInAnyPackage(
                    "com.openhtmltopdf..", "org.apache..", "java.awt..", "org.w3c.dom..")));
  }

  @Test
  void only_the_proof_knows_how_least_squares_are_found() {
    check(
        noClasses()
            .that(resideOutsideOfPackage(classesOf("proof")))
            .should()
            .dependOnClassesThat(resideInAnyPackage("org.hipparchus..")));
  }

  @Test
  void only_the_shell_knows_spring_and_the_terminal() {
    check(
        noClasses()
            .that(resideOutsideOfPackage(classesOf("shell")))
            .should()
            .dependOnClassesThat(
                resideInAnyPackage("org.springframework..", "org.jline..", "java.util.logging..")));
  }

  @Test
  void only_the_shell_speaks_to_the_console() {
    check(
        noClasses()
            .that(resideOutsideOfPackage(classesOf("shell")))
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .accessField(System.class, "in")
            .orShould()
            .callMethod(System.class, "console")
            .orShould()
            .callMethod(System.class, "exit", int.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(java.io.Console.class));
  }

  @Test
  void the_core_reads_no_files_and_no_clock() {
    String[] core = CORE.stream().map(ArchitectureTest::classesOf).toArray(String[]::new);
    check(
        noClasses()
            .that()
            .resideInAnyPackage(core)
            .should()
            .dependOnClassesThat(resideInAnyPackage("java.nio.file..", "java.net.."))
            .orShould()
            .callMethod(java.time.LocalDate.class, "now")
            .orShould()
            .callMethod(System.class, "currentTimeMillis"));
  }

  @Test
  void every_class_lies_in_a_package_that_has_its_place_in_the_order() {
    assertThat(CLASSES.stream().map(c -> c.getPackageName()).distinct())
        .allMatch(name -> TOP_DOWN.contains(name.replace("thwartwise.", "")));
  }

  /**
   * Words that nobody would type into a search box: a type is a noun of the trade or of a Java
   * programmer, never a bare participle, adverb or conjunction.
   */
  private static final Set<String> NO_NAMES =
      Set.of(
          ("Aboard AboardWords AcrossQuestions Along AlongQuestions AnswersCompared Apart"
                  + " Applies Asked Assumed AssumedSection BadTrial Beside Besides BoatAsFound Caps"
                  + " Capsized ChamberDoubts ChambersProven ChambersSealed Counting Craft"
                  + " CrewTrials Cut Doubt DoubtId DoubtWords Drawn DrawnLitres Drive EdgesRaised"
                  + " Fields FirstLook Floating FoamAdded Given GoingToday GoodUntil Heeled"
                  + " HeldOnWords Hurried Judge Kept KeptFields KeptMeasurement KeptQuestions"
                  + " KeptRecord KeptWords KitLeft KitMassDoubts KitMoved Known KnownAnswers"
                  + " KnownBoats KnownElectrics KnownLetters KnownOutfit Later Level LineWords"
                  + " LookedAtFindings LookedAtSection LookedAtWords Lying LyingRecord"
                  + " MeasuredLitres Mind MomentWords Moves NameAmong Named Nearest Nobody Nothing"
                  + " Offset2 Once OneMoreStation OnlyOurTypeface OutOfLineQuestions OutlineDoubts"
                  + " Overdue OwnSections PeopleShifted PeopleWords PlaceDoubts Plain PlainCaps"
                  + " PlainInput PlainNumber PlainNumbers Planned Played Printable Pulled Quoted"
                  + " Rated RecordShelf RestWords Restoring RoughLines Rounded RowsGiven"
                  + " RulesApplied RunningLine RunningWords SameAgain SeatDoubts SeatHeights"
                  + " SeatsLowered Settling Several Shared ShelfLock ShelfReading Shelved"
                  + " ShelvedRecord Shown Shrink SideDoubts SoFar Spot Standing StationDoubts"
                  + " Steady SteadyRest Story Stretch Stricter Swing Telling ThingDoubts"
                  + " ThingFingerprint ThingProperties TodayShelf Told Trial TrialSeen"
                  + " TrialSeenCodec TrialSeenExemption TrialSeenWords TriedRules Turn Typed"
                  + " TypedRow TypedTable Unanswered UnderWaters UnlessSeen UntriedAct"
                  + " WatersAssumed WayHome WaysIn WaysToSit WhenSwamped Whereabouts WordsParser"
                  + " Worked Working")
              .split(" "));

  @Test
  void a_type_is_called_what_a_reader_would_search_for() {
    assertThat(topLevel().map(JavaClass::getSimpleName))
        .isNotEmpty()
        .doesNotContainAnyElementsOf(NO_NAMES);
  }

  /**
   * Words that say nothing to somebody who looks for a method; {@code report}, {@code save}, {@code
   * isEmpty} and their like do.
   */
  private static final Set<String> NO_WORDS =
      Set.of(
          ("anew apart because beside besides heard kept lying mind nobody nought once said seen"
                  + " shelved somebody spelt spoilt stray telling thing things told unkept"
                  + " vouches whatever whereabouts")
              .split(" "));

  /** The name of a component that records keep. */
  private static final String KEPT_IN_RECORDS = "thwartwise.checks.CheckQuestion.things(";

  @Test
  void a_method_is_called_what_a_reader_would_search_for() {
    assertThat(
            CLASSES.stream()
                .flatMap(each -> each.getMethods().stream())
                .filter(method -> !method.getModifiers().contains(JavaModifier.PRIVATE))
                .filter(method -> !method.getModifiers().contains(JavaModifier.SYNTHETIC))
                .filter(method -> !method.getFullName().startsWith(KEPT_IN_RECORDS))
                .filter(method -> words(method.getName()).anyMatch(NO_WORDS::contains))
                .map(method -> method.getOwner().getSimpleName() + "." + method.getName()))
        .isEmpty();
  }

  private static Stream<String> words(String name) {
    return Stream.of(name.split("(?=[A-Z])")).map(word -> word.toLowerCase(Locale.ROOT));
  }

  @Test
  void no_simple_name_stands_in_two_packages() {
    Map<String, List<String>> packages =
        topLevel()
            .collect(
                Collectors.groupingBy(
                    JavaClass::getSimpleName,
                    TreeMap::new,
                    Collectors.mapping(JavaClass::getPackageName, Collectors.toList())));
    packages.values().removeIf(in -> in.size() < 2);
    assertThat(packages).isEmpty();
  }

  /** Six classes that all need each other can still be read together. */
  @Test
  void no_more_than_six_classes_need_each_other() {
    Map<String, Set<String>> uses = uses();
    Map<String, Set<String>> reached = new TreeMap<>();
    uses.keySet().forEach(name -> reached.put(name, reachedFrom(name, uses)));
    Set<List<String>> cycles =
        uses.keySet().stream()
            .map(
                name ->
                    reached.get(name).stream()
                        .filter(other -> reached.get(other).contains(name))
                        .sorted()
                        .toList())
            .filter(cycle -> cycle.size() > MOST_IN_A_CYCLE)
            .collect(Collectors.toSet());
    assertThat(cycles).isEmpty();
  }

  private static Stream<JavaClass> topLevel() {
    return CLASSES.stream()
        .filter(c -> c.getEnclosingClass().isEmpty() && !c.getSimpleName().equals("package-info"));
  }

  /** What each class, with the classes inside it, uses of ours. */
  private static Map<String, Set<String>> uses() {
    Map<String, Set<String>> uses = new TreeMap<>();
    for (JavaClass each : CLASSES) {
      String whole = outermost(each);
      Set<String> used = uses.computeIfAbsent(whole, unused -> new HashSet<>());
      each.getDirectDependenciesFromSelf().stream()
          .map(dependency -> outermost(dependency.getTargetClass().getBaseComponentType()))
          .filter(name -> name.startsWith("thwartwise.") && !name.equals(whole))
          .forEach(used::add);
    }
    return uses;
  }

  private static String outermost(JavaClass inner) {
    return inner.getName().replaceFirst("\\$.*", "");
  }

  private static Set<String> reachedFrom(String name, Map<String, Set<String>> uses) {
    Set<String> reached = new HashSet<>();
    Deque<String> open = new ArrayDeque<>(uses.get(name));
    while (!open.isEmpty()) {
      String next = open.pop();
      if (reached.add(next)) {
        open.addAll(uses.getOrDefault(next, Set.of()));
      }
    }
    return reached;
  }

  /** Rules about classes that were never seen would all hold. */
  @ParameterizedTest
  @MethodSource("packages")
  void the_classes_of_each_package_were_really_seen(String name) throws Exception {
    List<String> onDisk = compiled(name);
    List<String> seen =
        CLASSES.stream()
            .filter(c -> c.getPackageName().equals("thwartwise." + name))
            .map(c -> c.getName().substring(c.getPackageName().length() + 1))
            .toList();
    assertThat(seen).containsAll(onDisk);
    if (!name.equals("checklist")) {
      assertThat(seen).isNotEmpty();
    }
  }

  private static List<String> compiled(String name) throws IOException, URISyntaxException {
    Path root = Path.of(Main.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    Path folder = root.resolve("thwartwise").resolve(name.replace('.', '/'));
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(file -> file.endsWith(".class") && !file.startsWith("package-info"))
          .map(file -> file.replaceFirst("\\.class$", ""))
          .toList();
    }
  }

  private static void check(ArchRule rule) {
    rule.allowEmptyShould(true).check(CLASSES);
  }

  private static String exactly(String name) {
    return "thwartwise." + name;
  }

  private static String classesOf(String name) {
    return "thwartwise." + name + "..";
  }
}
