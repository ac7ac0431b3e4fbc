package thwartwise.sampleboats;

import thwartwise.boat.Boat;
import thwartwise.files.boat.BoatFile;

/** A plain box of a boat with everything electric that can be told of one. */
public final class ElectricBoat {
  private static final String HEAD =
      """
      { "format": "thwartwise/boat/1", "name": "Butter Dish", "water": "fresh",
        "hull": { "mass": 60, "material": "plywood", "thickness": 0.006, "floor": 0.03,
          "stations": [
            { "name": "aft", "points": [
              { "x": 0, "y": 0, "z": 0 }, { "x": 0, "y": 0.6, "z": 0 },
              { "x": 0, "y": 0.65, "z": 0.45 } ] },
            { "name": "middle", "points": [
              { "x": 2, "y": 0, "z": 0 }, { "x": 2, "y": 0.6, "z": 0 },
              { "x": 2, "y": 0.65, "z": 0.45 } ] },
            { "name": "fore", "points": [
              { "x": 4, "y": 0, "z": 0 }, { "x": 4, "y": 0.6, "z": 0 },
              { "x": 4, "y": 0.65, "z": 0.45 } ] } ] },
        "kit": [
          { "name": "battery", "mass": 24, "at": { "x": 1, "y": 0, "z": 0.15 }, "litres": 10,
            "fastened": true },
          { "name": "motor", "mass": 9, "at": { "x": -0.1, "y": 0, "z": 0.3 },
            "fastened": true },
          { "name": "panel", "mass": 3, "at": { "x": 3, "y": 0, "z": 0.5 }, "fastened": true },
          { "name": "oars", "mass": 4, "at": { "x": 2, "y": 0, "z": 0.3 }, "fastened": true } ]
      """;

  /** Without a word of what is electric. */
  public static final String WITHOUT = HEAD + "}";

  public static final String JSON =
      HEAD
          + """
            , "electrics": {
              "battery": { "kit": "battery", "chemistry": "AGM", "volts": 12, "ampHours": 80,
                "ratedHours": 20, "since": "2024-04-01", "starter": false, "strapped": true,
                "terminalsCovered": true },
              "motor": { "kit": "motor", "thrust": 200, "amps": 45, "claimedHours": 5 },
              "runs": [
                { "setting": "3", "metres": 200, "secondsThere": 150, "secondsBack": 200,
                  "ampsThere": 29, "ampsBack": 31 },
                { "setting": "1", "metres": 200, "secondsThere": 250, "secondsBack": 290,
                  "ampsThere": 9, "ampsBack": 10 } ],
              "panel": { "kit": "panel", "watts": 50, "panelFuse": 5, "batteryFuse": 5,
                "batteryStaysOn": true },
              "latitude": 52,
              "mainSwitch": "red key next to the battery",
              "mainWire": { "awg": 8, "insulation": 105,
                "alone": true, "fuseAt": 0.1, "fuse": 60 },
              "circuits": [
                { "name": "motor", "use": "motor", "amps": 45, "there": 2, "mm2": 10,
                  "insulation": 90, "alone": true, "fuse": 60, "fuseAt": 0.15,
                  "switch": "plug at the transom" },
                { "name": "cabin lamp", "use": "lamp", "amps": 0.5, "there": 3, "awg": 14,
                  "fuse": 2, "fuseAt": 0.1, "switch": "rocker switch", "hoursADay": 3 } ] }
            }
            """;

  private ElectricBoat() {}

  public static Boat boat() {
    return BoatFile.parse(JSON, "boat.json");
  }

  /** Battery and motor under names that do not say what they are. */
  public static Boat called(String battery, String motor) {
    return BoatFile.parse(
        JSON.replace("\"name\": \"battery\"", "\"name\": \"" + battery + "\"")
            .replace("\"kit\": \"battery\"", "\"kit\": \"" + battery + "\"")
            .replace("{ \"name\": \"motor\", \"mass\"", "{ \"name\": \"" + motor + "\", \"mass\"")
            .replace("\"kit\": \"motor\"", "\"kit\": \"" + motor + "\""),
        "boat.json");
  }
}
