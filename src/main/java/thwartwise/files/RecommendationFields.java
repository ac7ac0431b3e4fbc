package thwartwise.files;

import thwartwise.inspection.Recommendation;

/** The recommendation, read back. */
final class RecommendationFields {
  private RecommendationFields() {}

  static Recommendation read(Fields report) {
    Fields fields = report.freeObject("recommendation", ReportFields.REMEDY);
    return new Recommendation(
        count(fields, "people"),
        Figures.read(fields, "crewKg"),
        Figures.read(fields, "loadKg"),
        count(fields, "staysUpWith"),
        count(fields, "holdsUpWhenSwamped"),
        count(fields, "ifClaimedChambersProve"),
        ReportFields.text(fields, "governedBy"),
        ReportFields.texts(fields.value("nextPersonBreaks", ReportFields.REMEDY)),
        fields.value("excludedSeatings", ReportFields.REMEDY).list().stream()
            .map(ReportFields::texts)
            .toList(),
        ReportFields.list(fields, "lighterCrews", "lighter crew").stream()
            .map(RecommendationFields::lighterCrew)
            .toList(),
        ReportFields.flag(fields, "withheld"),
        ReportFields.texts(fields.value("reasons", ReportFields.REMEDY)));
  }

  private static Recommendation.LighterCrew lighterCrew(Fields crew) {
    return new Recommendation.LighterCrew(count(crew, "people"), Figures.read(crew, "eachUpToKg"));
  }

  private static int count(Fields fields, String key) {
    return fields.whole(key, Quantity.COUNT, ReportFields.REMEDY);
  }
}
