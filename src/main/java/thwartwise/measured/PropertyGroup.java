package thwartwise.measured;

import java.util.List;

/**
 * The single values of one object of the boat file.
 *
 * @param place of the object: keys from the top of the file, blank for the top itself
 */
public record PropertyGroup(String place, List<? extends Property<?, ?>> properties) {
  /** The whole table. */
  public static final List<PropertyGroup> ALL =
      List.of(
          new PropertyGroup(
              "", BoatProperties.OF_BOAT.stream().map(each -> each.property()).toList()),
          new PropertyGroup("hull", BoatProperties.OF_HULL),
          new PropertyGroup("hull stations points", PartProperties.OF_POINT),
          new PropertyGroup("hull skeg", PartProperties.OF_SKEG),
          new PropertyGroup("openings", PartProperties.OF_OPENING),
          new PropertyGroup("chambers", PartProperties.OF_CHAMBER),
          new PropertyGroup("places", PartProperties.OF_PLACE),
          new PropertyGroup("propulsion", PartProperties.OF_PROPULSION),
          new PropertyGroup("waters", BoatProperties.OF_WATERS),
          new PropertyGroup("kit", BoatProperties.OF_KIT),
          new PropertyGroup("aboard", BoatProperties.OF_PERSON),
          new PropertyGroup("leaks", OutfitProperties.OF_LEAK),
          new PropertyGroup("electrics", List.of(ElectricalProperties.LATITUDE)),
          new PropertyGroup("electrics battery", ElectricalProperties.OF_BATTERY),
          new PropertyGroup("electrics motor", ElectricalProperties.OF_MOTOR),
          new PropertyGroup("electrics runs", ElectricalProperties.OF_RUN),
          new PropertyGroup("electrics panel", ElectricalProperties.OF_PANEL),
          new PropertyGroup("electrics circuits", ElectricalProperties.OF_CIRCUIT));
}
