package thwartwise.boat;

/** Somebody aboard, seated: clothes and life jacket included in the mass, kg; y to port, m. */
public record Person(String name, double mass, String place, double y) {}
