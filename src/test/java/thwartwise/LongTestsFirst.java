package thwartwise;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.ClassDescriptor;
import org.junit.jupiter.api.ClassOrderer;
import org.junit.jupiter.api.ClassOrdererContext;

/**
 * Begins with the classes that take longest, whatever package they are in: one that begins last
 * keeps one processor busy while the others have nothing left to do.
 */
public final class LongTestsFirst implements ClassOrderer {
  /** Those of four seconds and more, with two at a time on two processors. */
  private static final Set<String> LONG =
      Set.of(
          """
          AdviceTest AppliedRulesTest ArchitectureTest BoatSpreadTest BrowserTest CapacitySearchTest
          CrewSearchByForceTest CrewSeatingTest EnterFlattersLeastTest EveryCheckTest
          FixedPosePropertiesTest FormattedSourcesTest InspectCommandTest LoadSearchTest
          OddAnswersTest OddInputTest OrdinaryBoatsLimitsTest PaperLengthTest PapersInFeetTest
          PdfTest PicturesTest PublishedExamplesTest RecommendationCoverageTest
          RecommendationPropertiesTest RecordChainTest ReplayCacheTest SeatsCommandTest
          SheetCommandTest SheetInWalkOrderTest SixPlainHullsTest SlipsCaughtTest WalkCommandTest
          """
              .strip()
              .split("\\s+"));

  @Override
  public void orderClasses(ClassOrdererContext context) {
    List<? extends ClassDescriptor> classes = context.getClassDescriptors();
    classes.sort(Comparator.comparing(c -> !LONG.contains(c.getTestClass().getSimpleName())));
  }

  static Set<String> names() {
    return LONG;
  }
}
