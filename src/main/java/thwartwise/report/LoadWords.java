package thwartwise.report;

import thwartwise.boat.Boat;
import thwartwise.boat.Kit;
import thwartwise.boat.Person;
import thwartwise.inspection.Recommendation;
import thwartwise.page.FigureText;
import thwartwise.page.LoadBar;
import thwartwise.page.Page;
import thwartwise.page.Sentence;

/** The load limit in kilograms: what the kit takes of it, and how much is used today. */
final class LoadWords {
  private LoadWords() {}

  static void write(Page page, Boat boat, Recommendation crew) {
    double kit = boat.kitMass();
    double people = boat.aboard().stream().mapToDouble(Person::mass).sum();
    page.paragraph(
        "Load limit: "
            + kg(FigureText.down(crew.load(), 0))
            + " in all, people and everything that is"
            + " not built in",
        kit > 0
            ? "The kit listed takes "
                + kg(FigureText.up(kit, 1))
                + " of it ("
                + Sentence.list(boat.kit().stream().map(LoadWords::item).toList())
                + "), which leaves "
                + kg(FigureText.down(Math.max(0, crew.load() - kit), 0))
            : "No kit is listed, so all of it is left for people and what they bring");
    page.gap();
    page.load(new LoadBar(crew.load(), kit, people));
    page.paragraph(used(crew, kit, people));
    page.gap();
    page.paragraph(
        "Weigh yourselves: never more than " + kg(FigureText.down(crew.load(), 0)) + " in all",
        Deferral.NO_PLATE);
  }

  private static String item(Kit kit) {
    return kit.name() + " " + kg(FigureText.plain(kit.mass()));
  }

  private static String kg(String figure) {
    return FigureText.with(figure, "kg");
  }

  // What is left is left for people: of other things only so much was tried besides them.
  private static String[] used(Recommendation crew, double kit, double people) {
    double over = kit + people - crew.load();
    String sum =
        "Today: kit "
            + kg(FigureText.up(kit, 1))
            + " and people "
            + kg(FigureText.up(people, 1))
            + " make "
            + kg(FigureText.up(kit + people, 1));
    return new String[] {
      sum,
      over > 0
          ? "That is " + kg(FigureText.up(over, 1)) + " too much"
          : "That leaves "
              + kg(FigureText.down(-over, 1))
              + " for people; of other things no more than "
              + kg(FigureText.down(Math.min(-over, crew.extra()), 0))
    };
  }
}
