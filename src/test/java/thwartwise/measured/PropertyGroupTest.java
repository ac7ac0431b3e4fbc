package thwartwise.measured;

import static thwartwise.Assertions.assertThat;

import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import thwartwise.measured.BoatProperties.PropertyGroup;

class PropertyGroupTest {
  /** A property that is declared and stands in no group is neither printed nor in the schema. */
  @Test
  void every_property_stands_in_one_group() throws IllegalAccessException {
    List<Object> declared = new ArrayList<>();
    for (Class<?> table :
        List.of(
            BoatProperties.class,
            PartProperties.class,
            OutfitProperties.class,
            ElectricalProperties.class,
            WireProperties.class)) {
      for (Field field : table.getDeclaredFields()) {
        if (field.getType() == Property.class) {
          declared.add(field.get(null));
        }
      }
    }
    List<Object> grouped = new ArrayList<>();
    PropertyGroup.ALL.forEach(group -> grouped.addAll(group.properties()));
    assertThat(declared).hasSizeGreaterThan(65);
    assertThat(grouped).containsExactlyInAnyOrderElementsOf(declared);
  }

  /** Whose change is told otherwise: as a cause by itself, in words of its own, or never. */
  private static final List<Object> WITHOUT_CHANGE_LABEL =
      List.of(
          BoatProperties.UNITS,
          BoatProperties.HULL_MASS,
          BoatProperties.KIT_MASS,
          BoatProperties.KIT_FASTENED,
          BoatProperties.KIT_IN,
          BoatProperties.WORKED_FROM,
          PartProperties.X,
          PartProperties.Y,
          PartProperties.Z,
          PartProperties.SKEG_THICKNESS,
          PartProperties.FILLING,
          PartProperties.SEAL,
          PartProperties.FOAM_KIND,
          PartProperties.FOAM_FASTENED,
          PartProperties.CHAMBER_LITRES,
          PartProperties.MIRRORED);

  @Test
  void every_other_property_has_a_name_for_its_change() {
    assertThat(PropertyGroup.ALL.stream().flatMap(group -> group.properties().stream()))
        .filteredOn(property -> property.changeLabel().isBlank())
        .map(Object.class::cast)
        .containsExactlyInAnyOrderElementsOf(WITHOUT_CHANGE_LABEL);
  }

  /** What no question of the walk is about by itself: it hangs on others, or few could answer. */
  private static final List<Object> NOT_ASKED =
      List.of(
          BoatProperties.WHEN_SWAMPED,
          BoatProperties.UNITS,
          BoatProperties.WORKED_FROM,
          PartProperties.X,
          PartProperties.Y,
          PartProperties.Z,
          PartProperties.SKEG_THICKNESS,
          PartProperties.OPENING_INTO,
          PartProperties.LIMBER_HOLE,
          ElectricalProperties.EXPONENT,
          ElectricalProperties.STRAPPED,
          WireProperties.GAUGE,
          WireProperties.INSULATION,
          WireProperties.SHEATHED,
          WireProperties.MAIN_GAUGE,
          WireProperties.MAIN_INSULATION,
          WireProperties.MAIN_SHEATHED);

  @Test
  void every_other_property_says_how_it_is_measured_and_why() {
    assertThat(PropertyGroup.ALL.stream().flatMap(group -> group.properties().stream()))
        .filteredOn(
            property ->
                property.subject().isBlank()
                    || property.how().isEmpty()
                    || property.why().isEmpty())
        .map(Object.class::cast)
        .containsExactlyInAnyOrderElementsOf(NOT_ASKED);
  }
}
