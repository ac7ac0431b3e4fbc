package thwartwise.report;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import thwartwise.boat.Filling.SealTest;
import thwartwise.inspection.Report.ChamberFigures;
import thwartwise.measure.UnitFormat;
import thwartwise.record.InspectionRecord;

/**
 * The validity of an inspection: until something changes, at most twelve months (judgement, the
 * time after which a leak test is out of date), and no longer than the leak tests on which it
 * rests.
 */
final class ValidityPeriod {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK);

  private ValidityPeriod() {}

  static LocalDate lastDay(InspectionRecord inspection) {
    LocalDate inspected = inspection.date().toLocalDate();
    if (ObservedTrialWords.counting(inspection).isPresent()) {
      return inspected;
    }
    return Stream.concat(Stream.of(inspected), testsCountedOn(inspection))
        .map(day -> day.plusMonths(SealTest.FRESH_MONTHS))
        .min(LocalDate::compareTo)
        .orElseThrow();
  }

  /** The validity in words; blank for a held launch, which is valid for nothing. */
  static String words(InspectionRecord inspection) {
    if (Verdict.of(inspection.report()) == Verdict.HELD) {
      return "";
    }
    String last = DAY.format(lastDay(inspection)).replace(" ", UnitFormat.TIED);
    if (ObservedTrialWords.counting(inspection).isPresent()) {
      return "Valid on " + last + " only, the day of the trial";
    }
    return "Valid until the boat, its kit or its chambers change, and not after " + last;
  }

  private static Stream<LocalDate> testsCountedOn(InspectionRecord inspection) {
    List<String> counted =
        inspection.report().chambers().stream()
            .filter(ChamberFigures::counted)
            .map(ChamberFigures::name)
            .toList();
    return inspection.boat().chambers().stream()
        .flatMap(chamber -> chamber.parts().stream())
        .filter(part -> counted.stream().anyMatch(part::isRecordedAs))
        .flatMap(part -> part.test().stream())
        .map(SealTest::date);
  }
}
