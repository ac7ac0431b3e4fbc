package thwartwise.files.rules;

import thwartwise.json.Location;
import thwartwise.measure.NearestWord;
import thwartwise.measure.PrintableText;
import thwartwise.rules.Limit;
import thwartwise.rules.RuleSet;
import thwartwise.rules.StrictDirection;

/**
 * What another rule set may say of our own limits: only those that have a stricter side, in our own
 * unit. So whatever stands in a file, it can tighten an answer and never loosen one.
 */
final class LimitRules {
  private LimitRules() {}

  static RuleSet checked(RuleSet set, RuleSet own, Location spot) {
    set.limits().keySet().stream().sorted().forEach(name -> check(name, set, own, spot));
    return set;
  }

  private static void check(String name, RuleSet set, RuleSet own, Location whole) {
    Location spot = whole.in("limits");
    if (!own.limits().containsKey(name)) {
      throw spot.fault(
          "there is no limit %s; the nearest is \"%s\". Correct the name or take the limit out.",
          PrintableText.quoted(name), NearestWord.to(name, own.limits().keySet()).orElseThrow());
    }
    check(set.limit(name), own.limit(name), spot.in(name));
  }

  private static void check(Limit limit, Limit ours, Location spot) {
    if (ours.stricter() == StrictDirection.NEITHER) {
      throw spot.fault(
          "this figure has no stricter side, so no other set may state it. Take it out.");
    }
    if (!limit.unit().equals(ours.unit())) {
      throw spot.fault(
          "\"unit\" is %s, wanted \"%s\". Turn the value into that unit.",
          PrintableText.quoted(limit.unit()), ours.unit());
    }
    if (limit.stricter() != StrictDirection.NEITHER && limit.stricter() != ours.stricter()) {
      throw spot.fault(
          "\"stricter\" is \"%s\", but this limit gets stricter the other way: \"%s\"."
              + " Correct it or leave the key out.",
          limit.stricter().word(), ours.stricter().word());
    }
  }
}
